import { type JobChain, needAt, type Step } from './job-chain.ts';
import { curedAt, type DayRate } from './season-rate.ts';
import { dayIndexAt, fitWork, type WorkDay } from './work-calendar.ts';

/** One future that a timetable is made for: how much slower the paint, how much warmer the days. */
export interface Future {
  /** In spreads of the logarithm of what a coat needs; above 0 is slower. */
  paint: number;
  /** In spreads of a day’s cure; above 0 is warmer. */
  weather: number;
}

/** What is expected, plainly. */
export const expectedFuture: Future = { paint: 0, weather: 0 };

export interface Workshop {
  days: readonly WorkDay[];
  /** What each place is expected to give, one entry a day of `days`. */
  rates: ReadonlyMap<string, readonly DayRate[]>;
  /** What the racks hold together, running metres; null where nobody said. */
  capacityM: number | null;
  /** A day that gives less than this at the place is too cold for the brush there, hours at 20 °C. */
  leastDayHours: number;
}

/** When a step is done. */
export interface PlannedStep {
  chain: number;
  step: number;
  beginsAt: number;
  endsAt: number;
  /** When what it left has cured for the step after it; null where nothing has to. */
  curedAt: number | null;
}

export interface Timetable {
  steps: PlannedStep[];
  /** When each chain is all done, in the order of the chains; null: not within the calendar. */
  doneAt: (number | null)[];
}

interface Progress {
  next: number;
  /** When the next step may begin for the paint’s sake; null: never within the calendar. */
  freeAt: number | null;
  onRack: boolean;
  doneAt: number | null;
  ended: boolean;
}

/**
 * Makes a timetable: whenever the hands are free they take the step that can begin first; of those
 * that can begin at once, the one whose batch comes first in the order.
 *
 * @param order - indices of `chains`, the first to be served first
 */
export function timetable(
  shop: Workshop,
  chains: readonly JobChain[],
  order: readonly number[],
  future: Future,
): Timetable {
  const progress = chains.map((chain): Progress => start(shop, chain, future));
  const steps: PlannedStep[] = [];
  let handsFreeAt = shop.days[0]?.startAt ?? 0;
  /** Since when the racks have had their present room: earlier starts would overfill them. */
  let roomSince = handsFreeAt;
  let usedM = chains.reduce((sum, chain) => sum + (chain.isOnRack ? chain.rackM : 0), 0);
  for (;;) {
    let best: { chain: number; beginsAt: number; endsAt: number } | null = null;
    for (const index of order) {
      const chain = chains[index] as JobChain;
      const at = progress[index] as Progress;
      const step = chain.steps[at.next];
      if (!step || at.freeAt === null || at.ended) continue;
      const needsRoom = step.onRack && !at.onRack;
      if (needsRoom && !hasRoom(shop, usedM, chain.rackM)) continue;
      const from = Math.max(at.freeAt, handsFreeAt, needsRoom ? roomSince : 0);
      // It begins no earlier than that: a step found already is as early.
      if (best !== null && from >= best.beginsAt) continue;
      const slot = brushSlot(shop, step, from);
      if (slot && (best === null || slot.beginsAt < best.beginsAt))
        best = { chain: index, ...slot };
    }
    if (best === null) break;
    const chain = chains[best.chain] as JobChain;
    const at = progress[best.chain] as Progress;
    const step = chain.steps[at.next] as Step;
    const cured = cureAfter(shop, step, best.endsAt, future);
    steps.push({
      chain: best.chain,
      step: at.next,
      beginsAt: best.beginsAt,
      endsAt: best.endsAt,
      curedAt: step.cure === null ? null : cured,
    });
    handsFreeAt = best.endsAt;
    if (step.onRack && !at.onRack) usedM += chain.rackM;
    if (!step.onRack && at.onRack) {
      usedM -= chain.rackM;
      roomSince = best.endsAt;
    }
    at.onRack = step.onRack;
    at.freeAt = cured;
    at.next++;
    if (at.next === chain.steps.length) {
      at.ended = true;
      at.doneAt = cured;
      // Boards that end their way on the rack are taken off when they have cured.
      if (at.onRack && cured !== null) {
        usedM -= chain.rackM;
        roomSince = Math.max(roomSince, cured);
        at.onRack = false;
      }
    }
  }
  return { steps, doneAt: progress.map((one) => one.doneAt) };
}

function start(shop: Workshop, chain: JobChain, future: Future): Progress {
  const { curing } = chain;
  const freeAt =
    curing === null
      ? chain.fromAt
      : cured(shop, curing.placeId, curing.fromAt, needAt(curing, future.paint), future);
  const ended = chain.steps.length === 0;
  return { next: 0, freeAt, onRack: chain.isOnRack, doneAt: ended ? freeAt : null, ended };
}

function cureAfter(shop: Workshop, step: Step, endsAt: number, future: Future): number | null {
  if (step.cure === null) return endsAt;
  return cured(shop, step.placeId, endsAt, needAt(step.cure, future.paint), future);
}

function cured(shop: Workshop, placeId: string, fromAt: number, need: number, future: Future) {
  const rates = shop.rates.get(placeId);
  return rates ? curedAt(shop.days, rates, fromAt, need, future.weather) : null;
}

/** An empty rack takes any lot, also one that nobody could divide further. */
function hasRoom({ capacityM }: Workshop, usedM: number, rackM: number): boolean {
  return capacityM === null || usedM <= 1e-9 || usedM + rackM <= capacityM + 1e-9;
}

/** When a step’s work fits: a coat waits for a day that is warm enough at its place. */
function brushSlot(shop: Workshop, step: Step, fromAt: number) {
  let from = fromAt;
  for (;;) {
    const slot = fitWork(shop.days, from, step.workMs);
    if (slot === null || step.kind === 'mount') return slot;
    const rates = shop.rates.get(step.placeId);
    const day = dayIndexAt(shop.days, slot.beginsAt);
    if (!rates) return null;
    if ((rates[day]?.hoursAt20 ?? 0) >= shop.leastDayHours) return slot;
    const next = shop.days[day + 1];
    if (!next) return null;
    from = next.startAt;
  }
}
