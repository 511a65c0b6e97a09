import { type Moment, toMoment } from '../contract/moment.ts';
import type {
  AheadBatch,
  LastStartReply,
  PlanAhead,
  SpreadMoment,
} from '../contract/plan-ahead.ts';
import { batchChain, type WorkPace } from '../rules/ahead/batch-chain.ts';
import { aheadGrounds } from '../rules/ahead/grounds.ts';
import { inLots, type JobChain } from '../rules/ahead/job-chain.ts';
import { lastStart } from '../rules/ahead/last-start.ts';
import { findOrder } from '../rules/ahead/order.ts';
import type { DayRate } from '../rules/ahead/season-rate.ts';
import { type SpreadTime, spreadTimes } from '../rules/ahead/spread.ts';
import type { Workshop } from '../rules/ahead/timetable.ts';
import { type WeekDay, workDays } from '../rules/ahead/work-days.ts';
import { rackRoom } from '../rules/rack-capacity.ts';
import { rateAt } from '../science/cure-rate.ts';
import type { AheadBatches, BoardsAsked } from './ahead-batches.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceRates } from './place-rates.ts';
import type { SiteFacts } from './site-facts.ts';

/** How far a plan looks: a year and what the next winter shows. */
const aheadDays = 400;
const dayMs = 86_400_000;

export interface AheadSettings extends WorkPace {
  days: readonly WeekDay[];
  from: string;
  to: string;
  timeZone: string;
  leastDayMeanC: number;
}

interface AheadParts {
  facts: () => SiteFacts;
  batches: AheadBatches;
  rates: PlaceRates;
  models: ModelPair;
  settings: AheadSettings;
}

/** What is to be done on which batch when, as far as can be told now. */
export function planAhead({ facts, batches, rates, models, settings }: AheadParts) {
  const { model } = models.ruling;
  const leastDayHours = 24 * rateAt(model, settings.leastDayMeanC);

  return (asked: BoardsAsked | null, now: number): PlanAhead => {
    const days = workDays(now, aheadDays, settings, settings.timeZone);
    const capacityM = rackCapacityM(facts());
    const named = batches(asked, now);
    const chains: JobChain[] = named.flatMap(({ batch }) =>
      inLots(batchChain(batch, settings, now), capacityM),
    );
    const places = new Set(chains.flatMap(placesOf));
    const known = new Map<string, readonly DayRate[]>();
    for (const placeId of places) {
      const ofPlace = rates(placeId, days);
      if (ofPlace) known.set(placeId, ofPlace);
    }
    const shop: Workshop = { days, rates: known, capacityM, leastDayHours };
    const found = chains.length === 0 ? null : findOrder(shop, chains);
    const spread = found ? spreadTimes(shop, chains, found.order) : null;
    const nameOf = (batchId: string) => named.find(({ batch }) => batch.batchId === batchId);
    const coatName = (batchId: string, coat: number) => nameOf(batchId)?.coatNames[coat] ?? '';

    return {
      now: toMoment(now),
      endsAt: toMoment(days.at(-1)?.startAt ?? now),
      batches: (found?.order ?? []).map((index): AheadBatch => {
        const chain = chains[index] as JobChain;
        const of = nameOf(chain.batchId);
        return {
          batchId: of?.isRecorded ? chain.batchId : null,
          name: of?.name ?? '',
          boards: chain.boards,
          lot: chain.lot,
          lots: chain.lots,
          steps: chain.steps.map((step, at) => {
            const times = spread?.steps.find((one) => one.chain === index && one.step === at);
            const never: SpreadTime = { early: null, likely: null, late: null };
            return {
              kind: step.kind,
              coat: step.coat,
              name: coatName(chain.batchId, step.coat),
              placeId: step.placeId,
              begins: moments(times?.begins ?? never),
              cured: step.cure === null ? null : moments(times?.cured ?? never),
            };
          }),
          done: moments(spread?.done[index] ?? { early: null, likely: null, late: null }),
        };
      }),
      done: spread && {
        boards: chains.reduce((sum, chain) => sum + chain.boards, 0),
        ...moments(spread.all),
      },
      order: found && {
        endsAt: moment(found.endsAt),
        boundAt: moment(found.boundAt),
        gapDays:
          found.endsAt === null || found.boundAt === null
            ? null
            : Math.max(0, (found.endsAt - found.boundAt) / dayMs),
        tried: found.tried,
      },
      racks: { capacityM, usedM: sumOf(chains.filter((chain) => chain.isOnRack)) },
      lastStarts: chains
        .filter((chain) => chain.lot === chain.lots - 1)
        .flatMap((chain) =>
          chain.steps
            .filter((step) => step.kind === 'coat' && step.cure !== null)
            .map((step): LastStartReply => {
              const answer = lastStart(
                days,
                known.get(step.placeId) ?? null,
                step.cure as NonNullable<typeof step.cure>,
                leastDayHours,
              );
              return {
                batchId: nameOf(chain.batchId)?.isRecorded ? chain.batchId : null,
                coat: step.coat,
                name: coatName(chain.batchId, step.coat),
                placeId: step.placeId,
                answer: answer.kind,
                at: answer.kind === 'by' ? toMoment(answer.at) : null,
                seasonEndsAt: 'seasonEndsAt' in answer ? moment(answer.seasonEndsAt) : null,
              };
            }),
        ),
      grounds: aheadGrounds({
        rates: [...known.values()],
        unknownPlaces: [...places]
          .filter((id) => !known.has(id))
          .map((id) => facts().places.get(id)?.name ?? id),
        capacityKnown: capacityM !== null,
        inParts: chains.some((chain) => chain.lots > 1),
        hasWall: [...facts().places.values()].some((place) => place.kind === 'wall'),
        settings,
      }),
    };
  };
}

function placesOf(chain: JobChain): string[] {
  const own = chain.curing ? [chain.curing.placeId] : [];
  return [...own, ...chain.steps.map((step) => step.placeId)];
}

function sumOf(chains: readonly JobChain[]): number {
  return chains.reduce((sum, chain) => sum + chain.rackM, 0);
}

/** What the racks hold together; null unless each of them was told, for then there is more room. */
function rackCapacityM({ places, batches }: SiteFacts): number | null {
  const racks = [...places.values()].filter((place) => place.kind === 'rack');
  const lengths = [...batches.values()].map((batch) => batch.boards.lengthMm / 1000);
  const meanLengthM =
    lengths.length === 0 ? null : lengths.reduce((a, b) => a + b, 0) / lengths.length;
  const each = racks.map((rack) => rackRoom(rack, [], meanLengthM).freeM);
  if (each.length === 0 || each.some((metres) => metres === null)) return null;
  return (each as number[]).reduce((sum, metres) => sum + metres, 0);
}

function moment(at: number | null): Moment | null {
  return at === null || !Number.isFinite(at) ? null : toMoment(at);
}

function moments({ early, likely, late }: SpreadTime): SpreadMoment {
  return { early: moment(early), likely: moment(likely), late: moment(late) };
}
