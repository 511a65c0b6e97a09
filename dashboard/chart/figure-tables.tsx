import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { HandTable } from './hand-table.tsx';
import { Shape } from './mark-key.tsx';
import { shapeOf } from './marks.ts';
import type { Panel, PanelMark } from './panel.ts';
import type { Range } from './range.ts';
import { type RowSpread, tableRows } from './table-rows.ts';
import { markWords, panelUnit, plain } from './writing.ts';
import type { ZoneClock } from './zone-clock.ts';

export interface FigureTablesProps {
  panels: readonly Panel[];
  marks: readonly PanelMark[];
  range: Range;
  clock: ZoneClock;
}

const MOST_ROWS = 48;

/** The figures of the panels row by row, what was measured by hand, and what happened. */
export function FigureTables({ panels, marks, range, clock }: FigureTablesProps) {
  const reader = useReader();
  const { words, calendar } = reader;
  const { table, lines } = words.chart;
  const { rows, byDay } = tableRows(panels, range, MOST_ROWS, clock);
  const columns = panels.flatMap((panel) => panel.lines.map((line) => ({ panel, line })));
  const when = (at: number) => (byDay ? calendar.date(at * 1000) : calendar.exact(at * 1000));
  return (
    <>
      {columns.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is to be reached by keys.
        <section class="table-scroll" tabIndex={0} aria-label={table.open}>
          <table class="figures">
            <caption>
              {table.caption(calendar.exact(range.from * 1000), calendar.exact(range.to * 1000))}
            </caption>
            <thead>
              <tr>
                <th scope="col">{table.when}</th>
                {columns.map(({ panel, line }) => (
                  <th scope="col" key={line.kind}>
                    {table.head(lines[line.kind], panelUnit(panel.kind, reader))}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ at, cells }) => (
                <tr key={at}>
                  <th scope="row">
                    <time dateTime={new Date(at * 1000).toISOString()}>{when(at)}</time>
                  </th>
                  {columns.map(({ panel, line }, i) => (
                    <td key={line.kind}>{cellWords(panel, cells[i] ?? null, reader)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <HandTable panels={panels} range={range} />
      {marks.length === 0 ? (
        <p class="quiet">{table.noMarks}</p>
      ) : (
        <table class="figures">
          <caption>{table.marksCaption}</caption>
          <thead>
            <tr>
              <th scope="col">{table.when}</th>
              <th scope="col">{table.what}</th>
            </tr>
          </thead>
          <tbody>
            {marks.map(({ at, mark }, i) => (
              <tr key={i}>
                <th scope="row">{calendar.exact(at * 1000)}</th>
                <td>
                  <Shape shape={shapeOf(mark)} />{' '}
                  {mark.kind === 'notice' ? <Said sentence={mark} /> : markWords(mark, reader)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

/** “12.1 / 13.4 / 15.0”; one figure where all are the same. */
function cellWords(
  panel: Panel,
  cell: RowSpread | null,
  reader: Parameters<typeof plain>[2],
): string {
  if (cell === null) return '–';
  const three = [cell.low, cell.mean, cell.high].map((value) => plain(panel.kind, value, reader));
  return new Set(three).size === 1 ? (three[0] ?? '') : three.join(' / ');
}
