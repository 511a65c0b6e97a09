import type { CalibrationHow } from '../../daemon/contract/calibration.ts';
import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import type { Said } from '../../daemon/contract/sentence.ts';
import { saltHumidity } from '../../daemon/science/saturated-salts.ts';
import { sentence } from '../../daemon/wording/english.ts';

/** A straight correction: gain × value + add. Of a resistance it works on the logarithm (base 10). */
export type CalibrationLine = { readonly gain: number; readonly add: number };

/** Gains beyond these are a slip of the pen or a broken sensor, not a calibration. Assumption. */
const gainAllowed = { least: 0.5, most: 2 };
/** Temperature of stirred ice and water, °C. **Source:** definition of the ice point. */
const icePointC = 0;
/** Closer points than this share of a quantity’s range give no slope. Assumption. */
const leastApart: Partial<Record<Quantity, number>> = {
  'air-temperature': 5,
  'surface-temperature': 5,
  'relative-humidity': 15,
  'wood-moisture': 4,
  'carbon-dioxide': 200,
};

const isTemperature = (quantity: Quantity) =>
  quantity === 'air-temperature' || quantity === 'surface-temperature';

/** The scale on which a quantity is corrected: the logarithm of a resistance, else the value itself. */
export const calibrationScale = (quantity: Quantity) =>
  quantity === 'wood-resistance'
    ? { to: (value: number) => Math.log10(value), from: (scaled: number) => 10 ** scaled }
    : { to: (value: number) => value, from: (scaled: number) => scaled };

/** What was shown and what was so, for each point of a calibration; an offset has none. */
function pointsOf(how: CalibrationHow): { shown: number; actual: number }[] {
  switch (how.kind) {
    case 'offset':
      return [];
    case 'hand-meter':
      return how.shown === undefined ? [] : [{ shown: how.shown, actual: how.actual }];
    case 'two-point':
      return how.points;
    case 'salts':
      return how.points.map(({ salt, tempC, shown }) => ({
        shown,
        actual: saltHumidity(salt, tempC),
      }));
    case 'ice-point':
      return [{ shown: how.shown, actual: icePointC }];
    case 'test-resistor':
      return [{ shown: how.shown, actual: how.ohms }];
  }
}

/**
 * The line a calibration amounts to.
 *
 * @param how - one that {@link calibrationFault} finds nothing wrong with
 */
export function calibrationLine(quantity: Quantity, how: CalibrationHow): CalibrationLine {
  if (how.kind === 'offset') return { gain: 1, add: how.add };
  const { to } = calibrationScale(quantity);
  const [first, second] = pointsOf(how).map(({ shown, actual }) => ({
    shown: to(shown),
    actual: to(actual),
  }));
  if (!first) return { gain: 1, add: 0 };
  if (!second) return { gain: 1, add: first.actual - first.shown };
  const gain = (second.actual - first.actual) / (second.shown - first.shown);
  return { gain, add: first.actual - gain * first.shown };
}

/** The figure that somebody typed, where a correction goes too far. */
const farFrom: Readonly<Record<CalibrationHow['kind'], string>> = {
  offset: '/how/add',
  'hand-meter': '/how/actual',
  'two-point': '/how/points/1/actual',
  salts: '/how/points/0/shown',
  'ice-point': '/how/shown',
  'test-resistor': '/how/shown',
};

export interface CalibrationFault {
  pointer: string;
  said: Said;
}

/** What is wrong with a calibration, and where; null when nothing is. */
export function calibrationFault(quantity: Quantity, how: CalibrationHow): CalibrationFault | null {
  const { low, high } = quantityFacts[quantity];
  const misfit = kindMisfit(quantity, how.kind);
  if (misfit) return { pointer: '/how/kind', said: misfit };
  const points = pointsOf(how);
  for (const [i, { shown, actual }] of points.entries()) {
    const isWrong = (value: number) => value < low || value > high;
    if (!isWrong(shown) && !isWrong(actual)) continue;
    const within = how.kind === 'two-point' || how.kind === 'salts' ? `/how/points/${i}` : '/how';
    return {
      pointer: `${within}/${isWrong(shown) ? 'shown' : 'actual'}`,
      said: sentence('figure-impossible', {
        ...{ value: isWrong(shown) ? shown : actual, quantity, low, high },
      }),
    };
  }
  const [first, second] = points;
  if (first && second && quantity !== 'wood-resistance') {
    const apart = leastApart[quantity] ?? 0;
    if (Math.abs(first.shown - second.shown) < apart) {
      return {
        pointer: '/how/points/1/shown',
        said: sentence('points-too-close', { apart, quantity }),
      };
    }
  }
  const { gain, add } = calibrationLine(quantity, how);
  if (!(gain >= gainAllowed.least && gain <= gainAllowed.most)) {
    return {
      pointer: '/how/points/1/actual',
      said: sentence('gain-too-far', { gain }),
    };
  }
  const reach = quantity === 'wood-resistance' ? 3 : (high - low) / 2;
  if (!Number.isFinite(add) || (gain === 1 && Math.abs(add) > reach)) {
    return {
      pointer: farFrom[how.kind],
      said: sentence('correction-too-far', { add }),
    };
  }
  return null;
}

function kindMisfit(quantity: Quantity, kind: CalibrationHow['kind']): Said | null {
  if (quantity === 'battery') return sentence('calibration-kind/battery', {});
  if (kind === 'salts' && quantity !== 'relative-humidity') {
    return sentence('calibration-kind/salts', {});
  }
  if (kind === 'ice-point' && !isTemperature(quantity)) {
    return sentence('calibration-kind/ice-point', {});
  }
  if (kind === 'test-resistor' && quantity !== 'wood-resistance') {
    return sentence('calibration-kind/test-resistor', {});
  }
  if (kind === 'offset' && quantity === 'wood-resistance') {
    return sentence('calibration-kind/resistance', {});
  }
  return null;
}
