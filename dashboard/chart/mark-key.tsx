import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { type MarkShape, markShapeKinds, markShapes, marksNear, NEAR, shapeOf } from './marks.ts';
import type { PanelMark } from './panel.ts';
import type { Range } from './range.ts';
import { markWords } from './writing.ts';

interface MarkKeyProps {
  /** Those that are seen. */
  marks: readonly PanelMark[];
  cursorAt: number | null;
  range: Range;
}

/** What the shapes above the curves mean, and in words the one that is pointed at. */
export function MarkKey({ marks, cursorAt, range }: MarkKeyProps) {
  const reader = useReader();
  const { calendar, words } = reader;
  if (marks.length === 0) return null;
  const there = new Set(marks.map(({ mark }) => shapeOf(mark)));
  const near = cursorAt === null ? [] : marksNear(marks, cursorAt, (range.to - range.from) * NEAR);
  return (
    <div class="mark-key" aria-hidden="true">
      {near.length === 0 ? (
        <ul>
          {markShapeKinds
            .filter((shape) => there.has(shape))
            .map((shape) => (
              <li key={shape}>
                <Shape shape={shape} />
                {words.chart.marks.kinds[shape]}
              </li>
            ))}
        </ul>
      ) : (
        <ul>
          {near.map(({ at, mark }) => (
            <li key={`${at} ${mark.kind}`}>
              <Shape shape={shapeOf(mark)} />
              <b>{calendar.exact(at * 1000)}</b>
              {mark.kind === 'notice' ? <Said sentence={mark} /> : markWords(mark, reader)}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** The shape of a mark, as it stands above the curves. */
export function Shape({ shape }: { shape: MarkShape }) {
  const { path, open } = markShapes[shape];
  return (
    <svg class="mark-shape" viewBox="0 0 10 10" focusable="false" aria-hidden="true">
      <path d={path} class={open ? 'mark-open' : 'mark-full'} />
    </svg>
  );
}
