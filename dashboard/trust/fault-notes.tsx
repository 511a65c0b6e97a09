import type { Sensor } from '../../daemon/contract/sensor.ts';
import { agoWords } from '../format/painters-time.ts';

/** What is found wrong with a sensor, what it means and what it does. */
export function FaultNotes({ faults, now }: { faults: Sensor['faults']; now: number }) {
  if (faults.length === 0) return null;
  return (
    <ul class="fault-notes">
      {faults.map((fault) => (
        <li key={`${fault.kind} ${fault.quantity}`}>
          <p class="fault-name">
            {fault.name}, began {agoWords(Date.parse(fault.since), now)}
          </p>
          <p>
            {fault.says} {fault.explanation}
          </p>
        </li>
      ))}
    </ul>
  );
}
