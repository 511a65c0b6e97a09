import type { VerdictLimits } from '../rules/gate-verdict.ts';
import type { NoticeLimits } from '../rules/notice.ts';
import type { TradeRules } from '../rules/usual-trade.ts';
import type { TouchPrior } from '../science/touch.ts';
import type { FaultKeeper } from './fault-watch.ts';
import type { ModelPair } from './hour-book.ts';
import type { AheadSettings } from './plan-ahead.ts';
import type {
  Correction,
  FactSource,
  FlagBits,
  HourKeeper,
  HourSource,
  OutlineSource,
  ReadingSource,
} from './ports.ts';
import type { NoticeKeeper } from './watch-notices.ts';

/** What the monitor needs of the house, and what the settings say; handed over by main. */
export interface MonitorParts {
  source: ReadingSource & OutlineSource & FactSource & HourSource;
  keeper: HourKeeper & NoticeKeeper & FaultKeeper;
  correction: Correction;
  flags: FlagBits;
  models: ModelPair;
  prior: TouchPrior;
  limits: VerdictLimits;
  /** Exposure limit for turpentine by the local rules, ppm; null for the lowest published one. */
  localLimitPpm(): number | null;
  /** How much colder the bottom shelf is taken to be beside a lone sensor, K; the usual when left out. */
  floorShelfColderK?: number;
  /** IANA name of the site’s time zone; UTC when left out. */
  timeZone?: string;
  /** What the operator set of notices; the usual limits when left out. */
  noticeLimits?: NoticeLimits & { ragRepeatHours: number };
  maxGapMs: number;
  /** How long a verdict on the air stands before it is made again; ten minutes when left out. */
  airFreshMs?: number;
  /** How work goes, and what is known of the season. */
  ahead: Omit<AheadSettings, 'timeZone'> & { monthlyMeanC: readonly number[] | null };
  /** What the settings say of the trade; the usual where left out. */
  trade?: TradeRules;
  newId: () => string;
  failed: (cause: unknown) => void;
  /** Lets others have their turn while much is read. */
  breathe?: () => Promise<void>;
  /** Told how many hours of a place were reckoned anew from readings. */
  reckoned?: (hours: number) => void;
}
