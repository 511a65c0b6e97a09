import { useReader } from '../reader.ts';
import { measurings } from './hand-points.ts';
import type { Panel } from './panel.ts';
import type { Range } from './range.ts';
import { panelFigure } from './writing.ts';

/** What was measured by hand, board by board. */
export function HandTable({ panels, range }: { panels: readonly Panel[]; range: Range }) {
  const reader = useReader();
  const { words, calendar, figures } = reader;
  const { byHand, table } = words.chart;
  const walks = measurings(
    panels.flatMap(({ points }) => points).filter(({ at }) => at >= range.from && at <= range.to),
  );
  if (walks.length === 0) return null;
  return (
    <table class="figures">
      <caption>{byHand.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{table.when}</th>
          <th scope="col">{byHand.where}</th>
          <th scope="col">{byHand.boards}</th>
        </tr>
      </thead>
      <tbody>
        {walks.map(({ at, of, points }, i) => (
          <tr key={i}>
            <th scope="row">
              <time dateTime={new Date(at * 1000).toISOString()}>{calendar.exact(at * 1000)}</time>
            </th>
            <td>{of}</td>
            <td>
              {points
                .map(({ board, value }) =>
                  byHand.board(figures.number(board), panelFigure('moisture', value, reader)),
                )
                .join(', ')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
