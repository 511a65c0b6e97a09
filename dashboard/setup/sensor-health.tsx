import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { plainList } from '../format/lists.ts';
import { agoOf } from '../format/painters-time.ts';
import { MISSING } from '../format/reader-figures.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

interface SensorHealthProps {
  sensors: readonly Sensor[];
  places: readonly OverviewPlace[];
}

/** Every sensor on one look: when it was last heard, its battery, what is wrong. Ill ones come first. */
export function SensorHealth({ sensors, places }: SensorHealthProps) {
  const { live } = useShed();
  const { words, figures, say } = useReader();
  const said = words.setup.health;
  if (sensors.length === 0) return null;
  const now = live.now.value;
  const placeName = (id: string | null) => places.find((place) => place.id === id)?.name;
  const ill = sensors.filter(({ faults }) => faults.length > 0);
  const well = sensors.filter(({ faults }) => faults.length === 0);
  return (
    <section class="panel sensor-health" aria-labelledby="health-title">
      <h2 id="health-title">{said.title}</h2>
      <p class={ill.length > 0 ? 'field-fault' : 'quiet'}>
        {said.summary(well.length, ill.length)}
      </p>
      <table class="figures stacked">
        <thead>
          <tr>
            <th scope="col">{said.sensor}</th>
            <th scope="col">{said.where}</th>
            <th scope="col">{said.heard}</th>
            <th scope="col">{said.battery}</th>
            <th scope="col">{said.faults}</th>
          </tr>
        </thead>
        <tbody>
          {[...ill, ...well].map((sensor) => {
            const heardAt = lastHeard(sensor);
            const battery = sensor.latest.find(({ quantity }) => quantity === 'battery');
            return (
              <tr key={sensor.id} class={sensor.faults.length > 0 ? 'sensor-ill' : undefined}>
                <th scope="row">{sensor.name ?? sensor.id}</th>
                <td data-label={said.where}>
                  {placeName(sensor.placeId) ?? words.setup.sensors.nowhere}
                </td>
                <td data-label={said.heard}>
                  {heardAt === null ? said.never : words.times.ago(agoOf(heardAt, now))}
                </td>
                <td data-label={said.battery}>
                  {battery === undefined ? MISSING : figures.percent(battery.value)}
                </td>
                <td data-label={said.faults}>
                  {sensor.faults.length === 0
                    ? said.nothing
                    : plainList(sensor.faults.map(({ nameSaid }) => say(nameSaid)))}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

/** UTC epoch ms of the newest reading of any quantity; null where there is none. */
function lastHeard({ latest }: Sensor): number | null {
  return latest.length === 0 ? null : Math.max(...latest.map(({ at }) => Date.parse(at)));
}
