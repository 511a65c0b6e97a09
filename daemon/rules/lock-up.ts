import type { Reason } from '../contract/gate.ts';
import type { LockUpLine } from '../contract/lock-up.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import type { CoatFact, LockUpTickFact, NoticeFact, RemarkFact } from './facts.ts';
import type { NightAhead } from './hour-ahead.ts';
import { localTime } from './local-time.ts';

interface LineWords {
  line: LockUpLine;
  title: string;
  text: string;
}

/**
 * What is seen to before the shed is left on a day of coating or sanding, the most dangerous first.
 *
 * **Source:** rags: an NFPA tip sheet, read on a municipal blog (flat outdoors in a single layer
 * away from buildings until dry, then a tight metal can with water); the rest common practice, no
 * source. Local rules and the product’s own sheet come first.
 */
export const lockUpWords: readonly LineWords[] = [
  {
    line: 'rags',
    title: 'Rags, gloves, paper, strainings, oily dust',
    text: 'They heat up by themselves and can set the shed alight hours later. Soak them and put them in a lidded metal can filled with water; or lay them flat in a single layer outdoors, away from buildings, until they are stiff, and then into that can. Never balled, in a bag, in a car or indoors.',
  },
  {
    line: 'vacuum-bag',
    title: 'Vacuum cleaner',
    text: 'Empty its bag or drum outdoors, into the can with water: sanding dust of oil paint heats up like a rag. Never leave it in the machine.',
  },
  {
    line: 'brushes',
    title: 'Brushes',
    text: 'Wipe them out and hang them in raw linseed oil, above the sediment, under a lid. Wipe the oil out again before the next use. What they were wiped with goes with the rags.',
  },
  {
    line: 'left-over-paint',
    title: 'Lids and left-over paint',
    text: 'Wipe the rims and press the lids down; a disc of plastic film on the paint keeps a skin away. A skin is lifted off before use, never stirred in; it goes with the rags.',
  },
  {
    line: 'waste',
    title: 'Waste',
    text: 'Liquid paint, oil and turpentine are hazardous waste: into a marked, closed can and to the collecting point, never down a drain or onto the ground.',
  },
  {
    line: 'heater',
    title: 'Heater',
    text: 'Nothing with a flame or a glowing wire stays on while solvent leaves the boards. Leave no heater on that is not made to run unattended, and nothing that burns within a metre and a half of it.',
  },
  {
    line: 'doors',
    title: 'Doors, air and power',
    text: 'Air through the first hours; shut up in the evening when it is wetter outside. Lights out over wet boards, tools unplugged, the way to the door free.',
  },
  {
    line: 'night',
    title: 'Tonight',
    text: 'Look at tonight’s low, and at the wet boards it may catch: cover, heat, or carry in what can be.',
  },
  {
    line: 'children',
    title: 'Children and animals',
    text: 'Paint, oil and turpentine are locked up, never in drink bottles, and nobody who cannot read a label gets to wet boards.',
  },
];

/** What made a day a coating day, in words; empty on a day that was none. */
export function coatingDayReasons(
  day: string,
  timeZone: string,
  facts: {
    coats: readonly (CoatFact & { batchName: string })[];
    remarks: readonly (RemarkFact & { batchName: string })[];
    /** Coats on their way. */
    begun?: readonly { at: number; batchName: string }[];
  },
): string[] {
  const isThen = (at: number | null) => at !== null && localTime(at, timeZone).day === day;
  const said: string[] = [];
  for (const { batchName, begunAt, finishedAt } of facts.coats) {
    if (isThen(finishedAt)) said.push(`${batchName} was coated.`);
    else if (isThen(begunAt)) said.push(`A coat on ${batchName} was begun.`);
  }
  for (const { batchName, kind, at } of facts.remarks) {
    if ((kind === 'sanded' || kind === 'clogged') && isThen(at))
      said.push(`${batchName} was sanded.`);
  }
  for (const { batchName, at } of facts.begun ?? []) {
    if (isThen(at)) said.push(`A coat on ${batchName} was begun.`);
  }
  return [...new Set(said)];
}

export interface LineState {
  done: boolean;
  at: number | null;
  by: string | null;
}

/**
 * Whether a line of a day is ticked: by the newest tick. One of the rags counts no longer when a
 * notice about rags was raised after it.
 *
 * @param ticks - in the order of time
 */
export function lineState(
  line: LockUpLine,
  day: string,
  ticks: readonly LockUpTickFact[],
  notices: readonly NoticeFact[],
): LineState {
  const newest = ticks.filter((tick) => tick.day === day && tick.line === line).at(-1);
  if (!newest?.done) return { done: false, at: null, by: null };
  const isOpenAgain =
    line === 'rags' &&
    notices.some(
      ({ kind, clearedAt, raisedAt }) =>
        kind === 'rags' && clearedAt === null && raisedAt > newest.at,
    );
  if (isOpenAgain) return { done: false, at: null, by: null };
  return { done: true, at: newest.at, by: newest.by };
}

const one = (value: number) => value.toFixed(1);

/** What the coming night does to boards that are still wet. */
export function nightRisks(night: NightAhead, limits: ApplicationLimits): Reason[] {
  const { lowC, lowErrorK, leastMarginK, highestRhPercent, rainMm } = night;
  const risks: Reason[] = [];
  if (lowC < limits.coldestC) {
    risks.push({
      code: 'night-cold',
      text: `Falls to about ${one(lowC)} °C (± ${one(lowErrorK)} K): below ${limits.coldestC} °C the coat stands still.`,
    });
  }
  if (leastMarginK !== null && leastMarginK < limits.dewMarginK) {
    risks.push({
      code: 'night-dew',
      text: `Comes to about ${one(leastMarginK)} K above the dew point; at least ${limits.dewMarginK} K would do.`,
    });
  }
  if (highestRhPercent !== null && highestRhPercent > limits.dampestRhPercent) {
    risks.push({
      code: 'night-damp',
      text: `Humidity gets to about ${Math.round(highestRhPercent)} %; at most ${limits.dampestRhPercent} % would do.`,
    });
  }
  if (rainMm !== null && rainMm > 0) {
    risks.push({ code: 'night-rain', text: `${one(rainMm)} mm of rain are forecast.` });
  }
  return risks;
}
