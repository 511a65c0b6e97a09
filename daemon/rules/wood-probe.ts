import type { Species } from '../contract/batch.ts';
import type { BoardsProbed, MoistureRange, WoodProbe } from '../contract/wood-probe.ts';
import {
  moistureFromResistance,
  RESISTANCE_TRUSTED_PERCENT,
  type ResistanceSpecies,
} from '../science/wood.ts';

/** Timber that has no curve of its own is read against this one: the softwood most like it. Assumption. */
const curveOf: Readonly<Record<Species, { curve: ResistanceSpecies; assumed: boolean }>> = {
  'scots-pine': { curve: 'scots-pine', assumed: false },
  'norway-spruce': { curve: 'norway-spruce', assumed: false },
  'douglas-fir': { curve: 'douglas-fir', assumed: false },
  larch: { curve: 'scots-pine', assumed: true },
  other: { curve: 'scots-pine', assumed: true },
};
const unknownTimber = { curve: 'scots-pine', assumed: true } as const;
/** Wood temperature where none is known, °C: that of the curves. Assumption. */
export const assumedWoodC = 20;

export const resistanceCurve = (species: Species | null) =>
  species === null ? unknownTimber : curveOf[species];

/** Moisture by a resistance, before any calibration, % of oven-dry mass. */
export function probeMoisture(ohms: number, species: Species | null, woodTempC: number): number {
  return moistureFromResistance(ohms, { species: resistanceCurve(species).curve, woodTempC });
}

/**
 * A moisture as it may be told: above fibre saturation and below what pins can tell it is no number.
 * **Source:** {@link RESISTANCE_TRUSTED_PERCENT}; fibre saturation of softwoods at about 28 to 30 %
 * (Wood Handbook, chapter 4, from memory), of which the lower is taken.
 */
export function asTold(percent: number): {
  range: MoistureRange;
  moisturePercent: number | null;
  limitPercent: number | null;
} {
  const { lowest, highest } = RESISTANCE_TRUSTED_PERCENT;
  if (percent > highest)
    return { range: 'wetter-than', moisturePercent: null, limitPercent: highest };
  if (percent < lowest) return { range: 'drier-than', moisturePercent: null, limitPercent: lowest };
  return { range: 'measured', moisturePercent: percent, limitPercent: null };
}

const wetness = ({ range, moisturePercent }: WoodProbe) =>
  range === 'wetter-than'
    ? Number.POSITIVE_INFINITY
    : range === 'drier-than'
      ? Number.NEGATIVE_INFINITY
      : (moisturePercent ?? 0);

/** The wettest of the probes and how far they spread; null without any. */
export function boardsProbed(probes: readonly WoodProbe[]): BoardsProbed | null {
  const sorted = [...probes].sort((a, b) => wetness(b) - wetness(a));
  const [worst] = sorted;
  if (!worst) return null;
  const figures = sorted.flatMap(({ moisturePercent }) =>
    moisturePercent === null ? [] : [moisturePercent],
  );
  return {
    probes: sorted,
    worst: worst.sensor,
    range: worst.range,
    moisturePercent: worst.moisturePercent,
    limitPercent: worst.limitPercent,
    spreadPercent: figures.length < 2 ? null : Math.max(...figures) - Math.min(...figures),
  };
}
