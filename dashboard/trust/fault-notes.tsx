import type { Sensor } from '../../daemon/contract/sensor.ts';
import { agoOf } from '../format/painters-time.ts';
import { useReader } from '../reader.ts';

/** What is found wrong with a sensor, what it means and what it does. */
export function FaultNotes({ faults, now }: { faults: Sensor['faults']; now: number }) {
  const { trust, times } = useReader().words;
  if (faults.length === 0) return null;
  return (
    <ul class="fault-notes">
      {faults.map((fault) => (
        <li key={`${fault.kind} ${fault.quantity}`}>
          <p class="fault-name">
            {trust.faultBegan(fault.name, times.ago(agoOf(Date.parse(fault.since), now)))}
          </p>
          <p>
            {fault.says} {fault.explanation}
          </p>
        </li>
      ))}
    </ul>
  );
}
