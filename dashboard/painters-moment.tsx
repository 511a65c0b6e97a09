import { useState } from 'preact/hooks';
import { pastOf, whenOf } from './format/painters-time.ts';
import { useReader } from './reader.ts';
import { useShed } from './shed-context.ts';

/** The clocks of a phone and a shed differ by so much without anything being ahead, ms. Assumption. */
const HARDLY_AHEAD_MS = 60_000;

interface PaintersMomentProps {
  /** UTC epoch ms. */
  at: number;
  /** How it is said where it stands in a longer phrase: “Likely tonight”. */
  children?: string;
}

/** A moment in a painter’s words; a tap shows the exact hour, another one the words again; paper has the hour. */
export function PaintersMoment({ at, children }: PaintersMomentProps) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  const [isExact, setExact] = useState(false);
  const now = live.now.value;
  const said =
    at > now + HARDLY_AHEAD_MS
      ? words.times.when(whenOf(at, now, calendar))
      : words.times.past(pastOf(at, now, calendar));
  return (
    <button
      type="button"
      class="moment"
      aria-pressed={isExact}
      title={words.times.exactHour}
      data-exact={calendar.exact(at)}
      onClick={() => setExact(!isExact)}
    >
      <time dateTime={new Date(at).toISOString()}>
        {isExact ? calendar.exact(at) : (children ?? said)}
      </time>
    </button>
  );
}
