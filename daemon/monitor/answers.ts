import { localTime } from '../rules/local-time.ts';
import { aheadBatches } from './ahead-batches.ts';
import type { AirWatch } from './air-watch.ts';
import type { BatchAssessor } from './assess-batch.ts';
import { batchReporter } from './batch-report.ts';
import type { CoatCures } from './coat-cure.ts';
import { coatHistory } from './coat-history.ts';
import type { CoatKnowledge } from './coat-knowledge.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { PlaceNow } from './place-now.ts';
import type { PlaceOutlooks } from './place-outlook.ts';
import { placeRates } from './place-rates.ts';
import { type AheadSettings, planAhead } from './plan-ahead.ts';
import { seasonRecord } from './season-record.ts';
import { recordedCoats, type SiteFacts } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';
import { helpFinder } from './what-helps.ts';

interface AnswerParts {
  facts: () => SiteFacts;
  air: PlaceAirReader;
  assess: BatchAssessor;
  cures: CoatCures;
  knowledge: CoatKnowledge;
  outlooks: PlaceOutlooks;
  airing: AirWatch;
  placeNow: PlaceNow;
  trade: TradeView;
  models: ModelPair;
  boardSpread: number;
  settings: AheadSettings & { monthlyMeanC: readonly number[] | null };
}

/** What is asked beside the verdicts: what comes, what became of it, and what would help. */
export function siteAnswers(parts: AnswerParts) {
  const { facts, air, assess, outlooks, models, settings } = parts;
  const { monthlyMeanC, timeZone } = settings;
  const record = seasonRecord(air, models.ruling);
  const reports = batchReporter({
    facts,
    air,
    assess,
    recorded: () => recordedCoats(facts()),
    history: coatHistory(parts),
    monthOf: (at) => localTime(at, timeZone).day.slice(0, 7),
  });
  return {
    ahead: planAhead({
      facts,
      batches: aheadBatches(parts),
      rates: placeRates({ facts, outlooks, record, models, monthlyMeanC }),
      models,
      settings,
    }),
    report: reports.report,
    season: reports.season,
    whatHelps: helpFinder(parts),
    /** Called when readings of the past, their places or their corrections changed. */
    forget: record.forget,
  };
}
