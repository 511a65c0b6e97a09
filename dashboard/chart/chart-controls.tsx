import { useReader } from '../reader.ts';
import { isWhole, panned, type Range, zoomed } from './range.ts';

interface ChartControlsProps {
  title: string;
  range: Range;
  whole: Range;
  onLook: (range: Range) => void;
}

/** Closer, wider, earlier, later, all: for whoever has neither wheel nor two fingers. */
export function ChartControls({ title, range, whole, onLook }: ChartControlsProps) {
  const { words, calendar } = useReader();
  const { controls, files } = words.chart;
  const middle = (range.from + range.to) / 2;
  const at = (seconds: number) => calendar.exact(seconds * 1000);
  const isAll = isWhole(range, whole);
  return (
    <div class="chart-controls">
      <p class="chart-span" aria-live="polite">
        {files.span(at(range.from), at(range.to))}
      </p>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would be a form without fields. */}
      <div class="chart-buttons" role="group" aria-label={controls.title(title)}>
        <button type="button" onClick={() => onLook(zoomed(range, whole, 0.5, middle))}>
          {controls.closer}
        </button>
        <button
          type="button"
          aria-disabled={isAll}
          onClick={() => onLook(zoomed(range, whole, 2, middle))}
        >
          {controls.wider}
        </button>
        <button
          type="button"
          aria-disabled={isAll}
          onClick={() => onLook(panned(range, whole, -0.5))}
        >
          {controls.earlier}
        </button>
        <button
          type="button"
          aria-disabled={isAll}
          onClick={() => onLook(panned(range, whole, 0.5))}
        >
          {controls.later}
        </button>
        <button type="button" aria-disabled={isAll} onClick={() => onLook(whole)}>
          {controls.all}
        </button>
      </div>
    </div>
  );
}
