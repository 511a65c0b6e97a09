import type { Gate } from '../contract/gate.ts';

/** What is known of one coat once it has had its time. All times UTC epoch ms. */
export interface CoatRecord {
  coatId: string;
  batchId: string;
  finishedAt: number;
  placeId: string;
  /** When each job became as likely as not to be possible, by the model; null: not yet, or unknown. */
  reachedAt: Record<Gate, number | null>;
  tests: readonly TestRecord[];
  boards: number;
  areaM2: number;
  /** null where nobody said. */
  usedL: number | null;
}

export interface TestRecord {
  at: number;
  gate: Gate;
  passed: boolean;
  /** What the model believed then, without this coat’s own tests, 0 to 1. */
  probability: number;
}

/** Days from the last board to a job, over several coats. */
export interface DaysToGate {
  coats: number;
  shortest: number;
  median: number;
  longest: number;
}

export interface SeasonRow {
  /** `yyyy-mm` on the site’s calendar. */
  month: string;
  placeId: string;
  coats: number;
  days: Record<Gate, DaysToGate | null>;
  usedL: number | null;
  boardsPerLitre: number | null;
  m2PerLitre: number | null;
}

/** How often boards were there when the model gave a chance between two bounds. */
export interface TestBin {
  from: number;
  to: number;
  tests: number;
  passed: number;
  /** Mean of the chances that were given. */
  meanProbability: number;
}

const dayMs = 86_400_000;
const gates: readonly Gate[] = ['turn', 'stack', 'mount', 'sand', 'recoat'];
/** Bounds of the bins: where verdicts change, and between. */
const bounds = [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1];

/**
 * The season by month and place, the earliest month first.
 *
 * @param monthOf - `yyyy-mm` of a moment on the site’s calendar
 */
export function seasonRows(
  records: readonly CoatRecord[],
  monthOf: (at: number) => string,
): SeasonRow[] {
  const groups = new Map<string, CoatRecord[]>();
  for (const record of records) {
    const key = `${monthOf(record.finishedAt)} ${record.placeId}`;
    groups.set(key, [...(groups.get(key) ?? []), record]);
  }
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, group]) => {
      const [month = '', placeId = ''] = key.split(' ');
      const weighed = group.filter((record) => record.usedL !== null && record.usedL > 0);
      const usedL = weighed.reduce((sum, record) => sum + (record.usedL ?? 0), 0);
      const per = (of: (record: CoatRecord) => number) =>
        usedL === 0 ? null : weighed.reduce((sum, record) => sum + of(record), 0) / usedL;
      return {
        month,
        placeId,
        coats: group.length,
        days: Object.fromEntries(
          gates.map((gate) => [gate, daysTo(group, gate)]),
        ) as SeasonRow['days'],
        usedL: weighed.length === 0 ? null : usedL,
        boardsPerLitre: per((record) => record.boards),
        m2PerLitre: per((record) => record.areaM2),
      };
    });
}

function daysTo(group: readonly CoatRecord[], gate: Gate): DaysToGate | null {
  const days = group
    .flatMap(({ reachedAt, finishedAt }) => {
      const at = reachedAt[gate];
      return at === null ? [] : [(at - finishedAt) / dayMs];
    })
    .sort((a, b) => a - b);
  const middle = days.length / 2;
  const [shortest, longest] = [days[0], days.at(-1)];
  if (shortest === undefined || longest === undefined) return null;
  const median =
    days.length % 2 === 1
      ? (days[Math.floor(middle)] as number)
      : ((days[middle - 1] as number) + (days[middle] as number)) / 2;
  return { coats: days.length, shortest, median, longest };
}

/** The model against the tests: in each bin as many should have passed as were thought to. */
export function testBins(records: readonly CoatRecord[]): TestBin[] {
  const tests = records.flatMap((record) => record.tests);
  return bounds.slice(0, -1).flatMap((from, i) => {
    const to = bounds[i + 1] as number;
    const inBin = tests.filter(
      ({ probability }) =>
        probability >= from && (probability < to || (to === 1 && probability === 1)),
    );
    if (inBin.length === 0) return [];
    return [
      {
        from,
        to,
        tests: inBin.length,
        passed: inBin.filter((test) => test.passed).length,
        meanProbability: inBin.reduce((sum, test) => sum + test.probability, 0) / inBin.length,
      },
    ];
  });
}

/**
 * Mean squared distance of the chances given from what was felt; 0 is perfect, 0.25 is no better
 * than tossing a coin. **Source:** Brier 1950, Monthly Weather Review 78(1), 1–3.
 *
 * @returns null without tests
 */
export function brierScore(records: readonly CoatRecord[]): number | null {
  const tests = records.flatMap((record) => record.tests);
  if (tests.length === 0) return null;
  return (
    tests.reduce((sum, { probability, passed }) => sum + (probability - Number(passed)) ** 2, 0) /
    tests.length
  );
}
