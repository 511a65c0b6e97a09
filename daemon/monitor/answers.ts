import { localTime } from '../rules/local-time.ts';
import { aheadBatches } from './ahead-batches.ts';
import { batchReporter } from './batch-report.ts';
import { coatHistory } from './coat-history.ts';
import type { PlaceAirReader } from './place-air.ts';
import { placeRates } from './place-rates.ts';
import { type AheadSettings, planAhead } from './plan-ahead.ts';
import { seasonRecord } from './season-record.ts';
import { recordedCoats } from './site-facts.ts';
import type { TradeView } from './trade-view.ts';
import { type HelpParts, helpFinder } from './what-helps.ts';

interface AnswerParts extends HelpParts {
  air: PlaceAirReader;
  trade: TradeView;
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
