import { dewMargin } from '../science/dew-margin.ts';

/** One hour of air; humidity null where it was not read. */
export interface AirHour {
  tempC: number;
  rhPercent: number | null;
}

interface Spread {
  lowest: number;
  mean: number;
  highest: number;
}

export interface ConditionSummary {
  hours: number;
  tempC: Spread | null;
  rhPercent: Spread | null;
  coldHours: number;
  dampHours: number;
  nearDewHours: number;
}

/** The air of a stretch in a few figures, against the limits of brushing. */
export function summarized(
  hours: readonly AirHour[],
  limits: { coldestC: number; dampestRhPercent: number; dewMarginK: number },
): ConditionSummary {
  const damp = hours.flatMap(({ rhPercent }) => (rhPercent === null ? [] : [rhPercent]));
  return {
    hours: hours.length,
    tempC: spreadOf(hours.map((hour) => hour.tempC)),
    rhPercent: spreadOf(damp),
    coldHours: hours.filter((hour) => hour.tempC < limits.coldestC).length,
    dampHours: damp.filter((rhPercent) => rhPercent > limits.dampestRhPercent).length,
    nearDewHours: hours.filter(
      ({ tempC, rhPercent }) =>
        rhPercent !== null &&
        rhPercent > 0 &&
        dewMargin(tempC, { tempC, rhPercent }) < limits.dewMarginK,
    ).length,
  };
}

function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null;
  return {
    lowest: values.reduce((a, b) => Math.min(a, b)),
    mean: values.reduce((a, b) => a + b, 0) / values.length,
    highest: values.reduce((a, b) => Math.max(a, b)),
  };
}
