import type { Sensor } from '../../daemon/contract/sensor.ts';
import { figure } from '../format/figures.ts';
import { speciesWords } from '../words/thing-words.ts';

const tempWords = {
  'own-surface': 'its own thermometer',
  'place-surface': 'a thermometer on the boards',
  air: 'the air there',
  assumed: 'assumed',
} as const;

/** What the pins of a probe tell: a number within their range, else only wetter or drier. */
export function ProbeLine({ wood }: { wood: Sensor['wood'] }) {
  if (wood === null) return null;
  const told =
    wood.moisturePercent === null
      ? `out of range: ${wood.range === 'wetter-than' ? 'wetter than' : 'drier than'} ${wood.limitPercent} %`
      : `${figure(Number(wood.moisturePercent.toFixed(1)))} %`;
  return (
    <p class="sensor-latest">
      <span>Pins: {told}</span>
      {wood.curve !== null && (
        <span>
          read as {speciesWords[wood.curve]}
          {wood.curveAssumed ? ' (assumed: say which timber)' : ''}
        </span>
      )}
      {wood.woodTempC !== null && wood.woodTempFrom !== null && (
        <span>
          wood at {figure(Number(wood.woodTempC.toFixed(1)))} °C, {tempWords[wood.woodTempFrom]}
        </span>
      )}
    </p>
  );
}
