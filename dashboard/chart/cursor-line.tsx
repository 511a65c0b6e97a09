import { plainList } from '../format/lists.ts';
import { useReader } from '../reader.ts';
import { measuredNear } from './hand-points.ts';
import { NEAR } from './marks.ts';
import type { Panel } from './panel.ts';
import type { Range } from './range.ts';
import { valueAt } from './value-at.ts';
import { lineFigure, measuredWords } from './writing.ts';

interface CursorLineProps {
  panels: readonly Panel[];
  /** Epoch s; null while nobody points. */
  at: number | null;
  range: Range;
  /** Led by keys: whoever hears the page is told, too. */
  isSpoken: boolean;
}

/** The moment of the cursor, which all panels share; for those who hear it, with every figure there. */
export function CursorLine({ panels, at, range, isSpoken }: CursorLineProps) {
  const reader = useReader();
  const { words, calendar } = reader;
  const { byHand, cursor, lines } = words.chart;
  const heard = at === null || !isSpoken ? [] : panels.flatMap((panel) => said(panel, at));
  return (
    <p class="chart-cursor" aria-live={isSpoken ? 'polite' : 'off'}>
      {at !== null && calendar.exact(at * 1000)}
      {at !== null && isSpoken && (
        <span class="spoken">
          {cursor.figures(heard.length === 0 ? cursor.nothing : plainList(heard))}
        </span>
      )}
    </p>
  );

  function said({ at: moments, lines: drawn, points }: Panel, moment: number): string[] {
    const near = measuredNear(points, moment, (range.to - range.from) * NEAR);
    return [
      ...drawn.flatMap(({ kind, values }) => {
        const value = valueAt(moments, values, moment);
        return value === null ? [] : [cursor.line(lines[kind], lineFigure(kind, value, reader))];
      }),
      ...(near === null ? [] : [cursor.line(byHand.name, measuredWords(near, reader))]),
    ];
  }
}
