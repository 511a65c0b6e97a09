import { within } from './argument-range.ts';

/** A reading with what may be known beside the temperature: see `CureSample`. */
type Sample = {
  readonly at: number;
  readonly tempC: number;
  readonly rhPercent?: number | undefined;
  readonly airChangesPerHour?: number | undefined;
};

/** Furthest date either side of 1970, ms. **Source:** ECMA-262, time values. */
const LAST_DATE_MS = 8.64e15;

/**
 * Samples ascending by time, those of equal time averaged.
 *
 * @param samples - in any order
 * @returns one sample for each time, the same to the last bit for any order of the input
 * @throws RangeError on a time that is not a date
 */
export function oneAtATime(samples: readonly Sample[]): Sample[] {
  for (const { at } of samples) within('at', at, -LAST_DATE_MS, LAST_DATE_MS);
  const sorted = [...samples].sort((a, b) => a.at - b.at || compareValues(a, b));
  const single: Sample[] = [];
  for (let start = 0; start < sorted.length; ) {
    const first = sorted[start] as Sample;
    let end = start + 1;
    while (sorted[end]?.at === first.at) end++;
    single.push(end === start + 1 ? first : averaged(sorted.slice(start, end), first));
    start = end;
  }
  return single;
}

function compareValues(a: Sample, b: Sample): number {
  return (
    a.tempC - b.tempC ||
    (a.rhPercent ?? -1) - (b.rhPercent ?? -1) ||
    (a.airChangesPerHour ?? -1) - (b.airChangesPerHour ?? -1)
  );
}

function averaged(group: readonly Sample[], first: Sample): Sample {
  const mean = (value: (sample: Sample) => number | undefined): number | undefined => {
    const known = group.map(value).filter((number) => number !== undefined);
    return known.length === 0 ? undefined : known.reduce((a, b) => a + b, 0) / known.length;
  };
  return {
    at: first.at,
    tempC: mean((sample) => sample.tempC) as number,
    rhPercent: mean((sample) => sample.rhPercent),
    airChangesPerHour: mean((sample) => sample.airChangesPerHour),
  };
}
