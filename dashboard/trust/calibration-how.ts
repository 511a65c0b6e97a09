import type { CalibrationHow } from '../../daemon/contract/calibration.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { fromLocalField } from '../format/calendar.ts';
import { numberOf, optionalNumberOf, textOf } from '../forms/typed.ts';

export type CalibrationKind = CalibrationHow['kind'];

/** Resistances are typed in MΩ: nobody counts eight zeros in a shed. */
export const OHMS_TYPED = 1e6;

/** Which ways of calibrating fit a quantity, the usual one first. */
export function kindsFor(quantity: Quantity): CalibrationKind[] {
  if (quantity === 'wood-resistance') return ['test-resistor'];
  if (quantity === 'relative-humidity') return ['hand-meter', 'offset', 'two-point', 'salts'];
  if (quantity.endsWith('temperature')) return ['hand-meter', 'offset', 'two-point', 'ice-point'];
  return ['hand-meter', 'offset', 'two-point'];
}

/** What was typed, as the contract wants it; a figure that is missing is named by the daemon. */
export function howTyped(kind: CalibrationKind, form: FormData): CalibrationHow {
  const figure = (name: string) => numberOf(form, name);
  switch (kind) {
    case 'hand-meter': {
      const shown = optionalNumberOf(form, 'shown');
      const measuredAt = textOf(form, 'measuredAt');
      return {
        kind,
        actual: figure('actual'),
        ...(shown === null ? {} : { shown }),
        ...(measuredAt === '' ? {} : { measuredAt: fromLocalField(measuredAt) }),
      };
    }
    case 'offset':
      return { kind, add: figure('add') };
    case 'ice-point':
      return { kind, shown: figure('shown') };
    case 'test-resistor':
      return { kind, ohms: figure('ohms') * OHMS_TYPED, shown: figure('shown') * OHMS_TYPED };
    case 'two-point':
      return {
        kind,
        points: [0, 1].map((i) => ({ shown: figure(`shown${i}`), actual: figure(`actual${i}`) })),
      };
    case 'salts':
      return {
        kind,
        points: [0, 1]
          .filter((i) => form.get(`salt${i}`))
          .map((i) => ({
            salt: textOf(form, `salt${i}`) as SaltPoint['salt'],
            tempC: figure(`temp${i}`),
            shown: figure(`shown${i}`),
          })),
      };
  }
}

type SaltPoint = Extract<CalibrationHow, { kind: 'salts' }>['points'][number];
