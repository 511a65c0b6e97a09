import { useReader } from '../reader.ts';
import { lineLooks } from './look.ts';
import type { Panel } from './panel.ts';
import { valueAt } from './value-at.ts';
import { lineFigure } from './writing.ts';

/** Each line with a piece of itself, its name and its figure where somebody points. */
export function PanelKey({ panel, at }: { panel: Panel; at: number | null }) {
  const reader = useReader();
  const { chart } = reader.words;
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
            {panel.lines.length > 1 && chart.lines[kind]}
            {at !== null && <b>{lineFigure(kind, value, reader)}</b>}
          </li>
        );
      })}
    </ul>
  );
}
