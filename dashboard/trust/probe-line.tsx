import type { Sensor } from '../../daemon/contract/sensor.ts';
import { useReader } from '../reader.ts';

/** What the pins of a probe tell: a number within their range, else only wetter or drier. */
export function ProbeLine({ wood }: { wood: Sensor['wood'] }) {
  const { words, figures } = useReader();
  const { probe } = words.trust;
  if (wood === null) return null;
  const outside = wood.range === 'wetter-than' ? probe.wetterThan : probe.drierThan;
  return (
    <p class="sensor-latest">
      <span>
        {wood.moisturePercent === null
          ? outside(figures.percent(wood.limitPercent, 1))
          : probe.moisture(figures.percent(wood.moisturePercent, 1))}
      </span>
      {wood.curve !== null && (
        <span>
          {(wood.curveAssumed ? probe.readAsAssumed : probe.readAs)(
            words.things.species[wood.curve],
          )}
        </span>
      )}
      {wood.woodTempC !== null && wood.woodTempFrom !== null && (
        <span>{probe.woodAt[wood.woodTempFrom](figures.temperature(wood.woodTempC))}</span>
      )}
    </p>
  );
}
