import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';

export interface TickLine {
  readonly key: string;
  readonly text: string;
  /** When it was ticked, ISO 8601; null while it is to do. */
  readonly at: string | null;
}

interface TickListProps<L extends TickLine> {
  lines: readonly L[];
  onTick: (line: L) => void;
}

/** Lines to tick with a thumb, with when they were; a second tap takes the tick back. */
export function TickList<L extends TickLine>({ lines, onTick }: TickListProps<L>) {
  const { coating } = useReader().words.trade;
  return (
    <ul class="step-list">
      {lines.map((line) => (
        <li key={line.key} class="step-line">
          <button
            type="button"
            class={line.at === null ? 'step' : 'step step-done'}
            aria-pressed={line.at !== null}
            onClick={() => onTick(line)}
          >
            {line.text}
          </button>
          <span class="step-when">
            {line.at === null ? coating.toDo : <PaintersMoment at={Date.parse(line.at)} />}
          </span>
        </li>
      ))}
    </ul>
  );
}
