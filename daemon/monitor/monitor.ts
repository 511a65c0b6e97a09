import type { PlaceAir } from '../contract/place.ts';
import type { ReadingFact } from '../rules/facts.ts';
import { usualFloorShelfColderK } from '../rules/floor-shelf.ts';
import { usualNoticeLimits, usualRagRepeatHours } from '../rules/notice.ts';
import { usualTrade } from '../rules/usual-trade.ts';
import { rateAt } from '../science/cure-rate.ts';
import { airWatch } from './air-watch.ts';
import { siteAnswers } from './answers.ts';
import { batchAssessor } from './assess-batch.ts';
import { brushCheck } from './brush-check.ts';
import { coatCures } from './coat-cure.ts';
import { coatKnowledge } from './coat-knowledge.ts';
import { cureLedger } from './cure-ledger.ts';
import { siteCurves } from './curves.ts';
import { faultWatch } from './fault-watch.ts';
import { airAhead } from './hours-ahead.ts';
import { lockUpList } from './lock-up-list.ts';
import type { MonitorParts } from './monitor-parts.ts';
import { morningView } from './morning.ts';
import { morningRound } from './morning-round.ts';
import { placesOverview } from './overview.ts';
import { placeAir } from './place-air.ts';
import { placeAirReply, placeNow } from './place-now.ts';
import { placeOutlooks } from './place-outlook.ts';
import type { Corrected } from './ports.ts';
import { roomVapour } from './room-vapour.ts';
import { sensorDoubts } from './sensor-trust.ts';
import { hangsTheSame, readSiteFacts } from './site-facts.ts';
import { tradeView } from './trade-view.ts';
import { nightWatch } from './watch-nights.ts';
import { noticeWatch } from './watch-notices.ts';
import { whoHears } from './who-hears.ts';
import { woodProbes } from './wood-probes.ts';

/** What the commit of a group tells the monitor. */
export interface CommittedReadings {
  fresh: readonly ReadingFact[];
  newSensors: readonly string[];
  dirtied: boolean;
}

/**
 * From readings to verdicts: keeps the cure of every coat up to date with each commit, and answers
 * what is to be said about places and batches at a moment.
 */
export function createMonitor(parts: MonitorParts) {
  const { source, keeper, correction, flags, models, prior, limits, maxGapMs } = parts;
  let site = readSiteFacts(source);
  let calibrated = correction(site.calibrations);
  const corrected: Corrected = (reading) => calibrated(reading);
  const facts = () => site;
  const air = placeAir({ readings: source, corrected, flags, facts, holdMs: maxGapMs });
  const ledger = cureLedger({
    air,
    hours: source,
    keeper,
    models: [models.ruling, models.beside],
    holdMs: maxGapMs,
    failed: parts.failed,
    ...(parts.reckoned ? { reckoned: parts.reckoned } : {}),
  });
  const outlooks = placeOutlooks({ facts, air, models, forecast: source.outdoorForecast });
  const cures = coatCures({ facts, ledger, air, models, outlooks, staleMs: maxGapMs });
  const knowledge = coatKnowledge({ facts, cures, prior });
  const readNow = placeNow(air, maxGapMs);
  const airing = airWatch({
    ...{ facts, air, staleMs: maxGapMs },
    ...(parts.airFreshMs === undefined ? {} : { freshMs: parts.airFreshMs }),
  });
  const trade = tradeView(facts, parts.trade ?? usualTrade);
  const wood = woodProbes({
    ...{ facts, readings: source, corrected, flags, air, staleMs: maxGapMs },
  });
  const assess = batchAssessor({
    woodAt: wood.at,
    doubts: sensorDoubts({
      facts,
      floorShelfColderK: parts.floorShelfColderK ?? usualFloorShelfColderK,
      rateAt: (tempC) => rateAt(models.ruling.model, tempC),
    }),
    facts,
    cures,
    knowledge,
    placeNow: readNow,
    models,
    limits,
    trade,
    isSettling: ledger.isSettling,
    airflowAt: (placeId: string, now: number) => airing.verdictAt(placeId, now).verdict,
    airChangeAt: (placeId: string, now: number) => airing.verdictAt(placeId, now).airChange,
    localLimitPpm: parts.localLimitPpm,
  });
  const timeZone = parts.timeZone ?? 'UTC';
  const brushing = {
    ...{ facts, limits: trade.rules.application, timeZone },
    airAhead: airAhead({ facts, outlooks, forecast: source.outdoorForecast }),
  };
  const fitToBrush = brushCheck({
    ...brushing,
    placeNow: readNow,
    hemisphere: trade.rules.hemisphere,
    airChangeAt: (placeId: string, now: number) => airing.verdictAt(placeId, now).airChange,
    localLimitPpm: parts.localLimitPpm,
  });
  const lockUp = lockUpList({ ...brushing, source, assess });
  const answers = siteAnswers({
    ...{ facts, air, assess, cures, knowledge, outlooks, airing, trade, models },
    placeNow: readNow,
    // Read anew each time: the setting can change while the daemon runs.
    get boardSpread() {
      return limits.boardSpread;
    },
    settings: { ...parts.ahead, timeZone },
  });
  const curves = siteCurves({
    ...{ facts, readings: source, notices: source.notices, corrected, flags, air, airing, wood },
    ...{ ledger, cures, assess, ruling: models.ruling, gapMs: maxGapMs },
    breathe: parts.breathe ?? (() => Promise.resolve()),
  });
  const overview = placesOverview({ facts, air, now: readNow, assess, airWatch: airing });
  const watch = noticeWatch({
    facts,
    source,
    overview,
    trade,
    keeper,
    newId: parts.newId,
    vapour: roomVapour(facts, assess),
    limits: { ...usualNoticeLimits, ragRepeatHours: usualRagRepeatHours, ...parts.noticeLimits },
  });

  const faults = faultWatch({
    ...{ facts, readings: source, corrected, flags, keeper, newId: parts.newId },
    changed: factsChanged,
    failed: parts.failed,
    ...(parts.breathe ? { breathe: parts.breathe } : {}),
  });

  const hearing = whoHears({ facts, corrected, flags });

  function readFacts(): void {
    site = readSiteFacts(source);
    calibrated = correction(site.calibrations);
  }

  /** Called after people recorded or corrected something. */
  function factsChanged(): void {
    const before = site;
    readFacts();
    airing.forget();
    curves.forget();
    // Most edits move no sensor: what was heard then still holds.
    if (hangsTheSame(before, site)) {
      ledger.settle();
      return;
    }
    faults.factsChanged(before);
    hearing.forget();
    air.forget();
    outlooks.forget();
    answers.forget();
    ledger.settle();
    ledger.refresh();
  }

  ledger.settle();

  return {
    facts,
    /** Takes in what a commit brought; its readings are on disk already. */
    committed(
      { fresh, newSensors, dirtied }: CommittedReadings,
      arrivedAt: number | null = null,
    ): void {
      if (newSensors.length > 0) readFacts();
      for (const { placeId, quantity, readings } of hearing.of(fresh)) {
        for (const step of air.feed(placeId, quantity, readings)) ledger.extend(step);
      }
      if (dirtied) {
        answers.forget();
        curves.forget();
        ledger.settle();
      }
      faults.committed(fresh, arrivedAt);
    },
    factsChanged,
    /** Looks for faults of sensors; true when one was found or is over. */
    watchFaults: faults.look,
    /** Takes note of a figure that was refused at the door, because it can be no reading. */
    heardImpossible: faults.impossible,
    /** Called after another weather forecast came in. */
    forecastChanged: outlooks.forget,
    /** Forgets all that was made of readings; it is made anew from the store when asked for. */
    startOver(): void {
      readFacts();
      hearing.forget();
      air.forget();
      airing.forget();
      outlooks.forget();
      answers.forget();
      curves.forget();
      faults.startOver();
      ledger.startOver();
    },
    air: (placeId: string, now: number): PlaceAir =>
      placeAirReply(air, readNow, site, placeId, now),
    eachSample: air.eachSample,
    /** Whether corrected hours are being written. */
    isSettling: ledger.isSettling,
    corrected,
    wood,
    overview,
    curves,
    /** What is said of the air at a place, alone. */
    airflowAt: (placeId: string, now: number) => airing.verdictAt(placeId, now).verdict.airflow,
    fitToBrush,
    lockUp,
    morning: morningView({ facts, overview, fitToBrush, source }),
    assess,
    ahead: answers.ahead,
    report: answers.report,
    season: answers.season,
    whatHelps: answers.whatHelps,
    trade,
    morningRound: morningRound({ facts, assess, trade }),
    /** Nights of dew on wet film that are not marked yet. */
    dewNights: nightWatch({ facts, air, assess, trade, newId: parts.newId }),
    /** Raises and clears notices; true when there was something to change. */
    watchNotices: watch,
  };
}
export type Monitor = ReturnType<typeof createMonitor>;
