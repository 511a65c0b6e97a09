import { lengthWords } from './format/painters-time.ts';
import { useShed } from './shed-context.ts';

/** Says loudly that the daemon is away or in trouble, and goes by itself when that is over. */
export function AwayBanner() {
  const { live } = useShed();
  const connection = live.connection.value;
  const overview = live.overview.value;
  if (connection.kind === 'lost') {
    const silence = lengthWords(live.deviceNow.value - connection.since);
    return (
      <div class="away" role="alert">
        <p class="away-word">No word from the shed</p>
        <p>
          {/* Read aloud once, not every second. */}
          <span aria-hidden="true">Silent for {silence}. </span>
          {overview === null
            ? 'Nothing was heard yet. Trying on.'
            : 'What stands here is old. Trying on; it comes back by itself.'}
        </p>
      </div>
    );
  }
  if (overview !== null && !overview.intake.connected) {
    return (
      <div class="away" role="alert">
        <p class="away-word">No readings come in</p>
        <p>The daemon has lost its broker. It tries again by itself.</p>
      </div>
    );
  }
  const doubt = overview?.doubts[0];
  if (overview !== null && doubt !== undefined) {
    return (
      <div class="away" role="alert">
        <p class="away-word">
          {overview.intake.refusing ? 'The disk is full' : 'Look after the computer'}
        </p>
        <p>{doubt}</p>
      </div>
    );
  }
  return null;
}
