import { useState } from 'preact/hooks';
import { pastOf, whenOf } from './format/painters-time.ts';
import { useReader } from './reader.ts';
import { useShed } from './shed-context.ts';

/** A moment in a painter’s words; a tap shows the exact hour, another one the words again. */
export function PaintersMoment({ at }: { at: number }) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  const [isExact, setExact] = useState(false);
  const now = live.now.value;
  const said =
    at > now
      ? words.times.when(whenOf(at, now, calendar))
      : words.times.past(pastOf(at, now, calendar));
  return (
    <button
      type="button"
      class="moment"
      aria-pressed={isExact}
      title={words.times.exactHour}
      onClick={() => setExact(!isExact)}
    >
      <time dateTime={new Date(at).toISOString()}>{isExact ? calendar.exact(at) : said}</time>
    </button>
  );
}
