import { useEffect, useRef, useState } from 'preact/hooks';
import { shownNumber, typedNumber } from '../format/typed-number.ts';
import { type Measure, toMetric, toReaders, unitOf } from '../format/units.ts';
import { useReader } from '../reader.ts';
import { type FieldFrame, Framed } from './field.tsx';
import { inReadersUnits } from './problem-units.ts';

type MeasureFieldProps = FieldFrame & {
  /** The field of the form that the metric figure stands in. */
  name: string;
  measure: Measure;
  /** What the daemon names limits of, where that is not the figure itself; a volume of its sides. */
  limitsOf?: Measure;
  /** Metric, as text; empty or left out for none. */
  value?: string;
  /** Told with every key, in metric, as text. */
  onMetric?: (value: string) => void;
};

/** Decimals that survive a figure's way into another unit and back. */
const KEPT_DIGITS = 9;
const SHOWN_DIGITS = 4;

/**
 * A figure that is typed in the reader's units and kept in metric ones. What is no number is passed on
 * as it was typed, so that the daemon names the field.
 */
export function MeasureField(props: MeasureFieldProps) {
  const { name, measure, limitsOf = measure, value = '', onMetric, problem, ...frame } = props;
  const { units, locale } = useReader();
  const [metric, setMetric] = useState(value);
  const kept = useRef<HTMLInputElement>(null);
  // A form that is cleared after sending empties the line that is seen, and not a hidden one.
  useEffect(() => {
    const form = kept.current?.form;
    const clear = () => setMetric(value);
    form?.addEventListener('reset', clear);
    return () => form?.removeEventListener('reset', clear);
  }, [value]);
  return (
    <Framed {...frame} problem={inReadersUnits(problem, limitsOf, units)}>
      {(attributes) => (
        <span class="field-line">
          <input
            {...attributes}
            class="input input-number"
            type="text"
            autocomplete="off"
            // A fraction of an inch has a stroke in it.
            inputMode={unitOf(measure, units).unit === 'in' ? 'text' : 'decimal'}
            defaultValue={shownNumber(
              shown(value, (figure) => toReaders(measure, figure, units)),
              locale,
            )}
            onInput={(event) => {
              const typed = event.currentTarget.value;
              const figure = typedNumber(typed);
              const next = Number.isNaN(figure)
                ? typed.trim()
                : String(Number(toMetric(measure, figure, units).toPrecision(KEPT_DIGITS)));
              setMetric(next);
              onMetric?.(next);
            }}
          />
          <input ref={kept} type="hidden" name={name} value={metric} />
          <span class="field-unit">{unitOf(measure, units).unit}</span>
        </span>
      )}
    </Framed>
  );
}

function shown(metric: string, change: (figure: number) => number): string {
  const figure = typedNumber(metric);
  if (Number.isNaN(figure)) return metric;
  return String(Number(change(figure).toPrecision(Math.max(SHOWN_DIGITS, metric.length))));
}
