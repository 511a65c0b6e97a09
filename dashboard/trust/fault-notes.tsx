import type { Sensor } from '../../daemon/contract/sensor.ts';
import { agoOf } from '../format/painters-time.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';

/** What is found wrong with a sensor, what it means and what it does. */
export function FaultNotes({ faults, now }: { faults: Sensor['faults']; now: number }) {
  const { words, say } = useReader();
  const { trust, times } = words;
  if (faults.length === 0) return null;
  return (
    <ul class="fault-notes">
      {faults.map((fault) => (
        <li key={`${fault.kind} ${fault.quantity}`}>
          <p class="fault-name">
            {trust.faultBegan(say(fault.nameSaid), times.ago(agoOf(Date.parse(fault.since), now)))}
          </p>
          <p>
            <Said sentence={fault.saysSaid} /> <Said sentence={fault.explanationSaid} />
          </p>
        </li>
      ))}
    </ul>
  );
}
