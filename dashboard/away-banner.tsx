import { lengthOf } from './format/painters-time.ts';
import { useReader } from './reader.ts';
import { Said } from './said.tsx';
import { useShed } from './shed-context.ts';

/** Says loudly that the daemon is away or in trouble, and goes by itself when that is over. */
export function AwayBanner() {
  const { live } = useShed();
  const { frame, times } = useReader().words;
  const { away } = frame;
  const connection = live.connection.value;
  const overview = live.overview.value;
  if (connection.kind === 'lost') {
    const silence = times.length(lengthOf(live.deviceNow.value - connection.since));
    return (
      <div class="away" role="alert">
        <p class="away-word">{away.title}</p>
        <p>
          {/* Read aloud once, not every second. */}
          <span aria-hidden="true">{away.silentFor(silence)} </span>
          {overview === null ? away.nothingYet : away.old}
        </p>
      </div>
    );
  }
  if (overview !== null && !overview.intake.connected) {
    return (
      <div class="away" role="alert">
        <p class="away-word">{away.noReadings}</p>
        <p>{away.brokerLost}</p>
      </div>
    );
  }
  const doubt = overview?.doubtsSaid[0];
  if (overview !== null && doubt !== undefined) {
    return (
      <div class="away" role="alert">
        <p class="away-word">{overview.intake.refusing ? away.diskFull : away.lookAfter}</p>
        <p>
          <Said sentence={doubt} />
        </p>
      </div>
    );
  }
  return null;
}
