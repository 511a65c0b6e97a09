import { useReader } from '../reader.ts';
import { handPath, measuredNear } from './hand-points.ts';
import { lineLooks } from './look.ts';
import { NEAR } from './marks.ts';
import type { Panel } from './panel.ts';
import type { Range } from './range.ts';
import { valueAt } from './value-at.ts';
import { lineFigure, measuredWords } from './writing.ts';

interface PanelKeyProps {
  panel: Panel;
  /** Where somebody points, epoch s; null while nobody does. */
  at: number | null;
  range: Range;
}

/** Each line with a piece of itself, its name and its figure where somebody points. */
export function PanelKey({ panel, at, range }: PanelKeyProps) {
  const reader = useReader();
  const { chart } = reader.words;
  const isNamed = panel.lines.length > 1 || panel.points.length > 0;
  return (
    <ul class="panel-key" aria-hidden="true">
      {panel.lines.map(({ kind, values }) => {
        const { colour, width, dash } = lineLooks[kind];
        const value = at === null ? null : valueAt(panel.at, values, at);
        return (
          <li key={kind}>
            <svg class="panel-stroke" viewBox="0 0 30 8" focusable="false" aria-hidden="true">
              <path
                d="M0 4H30"
                stroke={`var(${colour})`}
                stroke-width={width}
                stroke-dasharray={dash.join(' ')}
              />
            </svg>
            {isNamed && chart.lines[kind]}
            {at !== null && <b>{lineFigure(kind, value, reader)}</b>}
          </li>
        );
      })}
      <ByHand panel={panel} at={at} range={range} />
    </ul>
  );
}

/** The mark of what was measured by hand, and the boards and moment of what is pointed at. */
function ByHand({ panel: { points }, at, range }: PanelKeyProps) {
  const reader = useReader();
  if (!points.some((point) => point.at >= range.from && point.at <= range.to)) return null;
  const near = at === null ? null : measuredNear(points, at, (range.to - range.from) * NEAR);
  return (
    <li>
      <svg class="mark-shape" viewBox="0 0 10 10" focusable="false" aria-hidden="true">
        <path class="hand-cross" d={handPath} />
      </svg>
      {near === null ? reader.words.chart.byHand.name : <b>{measuredWords(near, reader)}</b>}
    </li>
  );
}
