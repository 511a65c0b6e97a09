import type { FitReason, FitWord } from '../contract/fit-to-brush.ts';
import type { PlaceKind } from '../contract/place.ts';
import type { Sentence } from '../contract/sentence.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import { sentence } from '../wording/english.ts';
import type { AirNow } from './brush-air.ts';
import type { PlaceFact } from './facts.ts';
import { marginOf, type NightAhead } from './hour-ahead.ts';
import { localTime } from './local-time.ts';
import { type Hemisphere, sunMayBeOn } from './wall-sun.ts';

/** All that is looked at before somebody opens a tin. */
export interface BrushQuestion {
  kind: PlaceKind;
  facing: PlaceFact['facing'];
  exposure: PlaceFact['exposure'];
  air: AirNow;
  night: NightAhead | null;
  /** Newest figures of a meter; null where nobody measured. */
  moisture: { values: readonly number[]; at: number } | null;
  /** True when the boards carry no coat yet. */
  isBare: boolean;
  shelf: { freeM: number | null; usedM: number; neededM: number | null } | null;
  /** What is to be said about the solvent of the coat that is to go on. */
  solvent: readonly Sentence[];
  now: number;
  timeZone: string;
  hemisphere: Hemisphere;
}

interface Figures {
  figure: number;
  limit: number | null;
  unit: string;
}
const noFigures = { figure: null, limit: null, unit: null };

/** A sentence with what it does to the word, and the figure it rests on. */
const weigh = (weight: FitReason['weight'], said: Sentence, figures?: Figures): FitReason => ({
  ...said,
  weight,
  ...(figures ?? noFigures),
});

/** Everything that speaks for and against brushing now, each with its figure and limit. */
export function brushReasons(question: BrushQuestion, limits: ApplicationLimits): FitReason[] {
  return [
    ...airReasons(question.air, limits),
    ...sunReason(question),
    ...nightReasons(question.night, limits),
    moistureReason(question, limits),
    ...shelfReason(question.shelf),
    ...solventReasons(question),
    ...(question.kind === 'room' || question.kind === 'rack'
      ? [weigh('note', sentence('floor', {}))]
      : []),
  ];
}

/** The word that the reasons come to. */
export function brushWord(reasons: readonly FitReason[]): FitWord {
  const has = (weight: FitReason['weight']) => reasons.some((one) => one.weight === weight);
  if (has('no')) return 'no';
  if (has('unknown')) return 'cannot-tell';
  return has('poor') ? 'poor' : 'good';
}

/** The word as a sentence. */
export const brushWords = (word: FitWord): Sentence => sentence(`fit-${word}`, {});

/** That nobody sent a forecast of rain, for whoever brushes outdoors. */
export const rainUnknown = (): FitReason => weigh('unknown', sentence('rain-unknown', {}));

function airReasons(air: AirNow, limits: ApplicationLimits): FitReason[] {
  const { tempC, rhPercent } = air;
  if (tempC === null || air.stale) {
    return [weigh('unknown', sentence('air-unknown/to-brush', {}))];
  }
  const reasons = [temperatureReason(tempC, limits)];
  const marginK = marginOf({ tempC, rhPercent });
  if (rhPercent === null || marginK === null) {
    return [...reasons, weigh('unknown', sentence('humidity-unknown', {}))];
  }
  const limitPercent = limits.dampestRhPercent;
  const isDamp = rhPercent > limitPercent;
  const limitK = limits.dewMarginK;
  const isNear = marginK < limitK;
  return [
    ...reasons,
    weigh(
      isDamp ? 'no' : 'fine',
      sentence(isDamp ? 'humidity/too-damp' : 'humidity/dry-enough', { rhPercent, limitPercent }),
      { figure: rhPercent, limit: limitPercent, unit: '%' },
    ),
    weigh(
      isNear ? 'no' : 'fine',
      sentence(isNear ? 'dew-margin/too-near' : 'dew-margin/clear', { marginK, limitK }),
      { figure: marginK, limit: limitK, unit: 'K' },
    ),
  ];
}

function temperatureReason(tempC: number, limits: ApplicationLimits): FitReason {
  const { coldestC, verySlowBelowC, slowBelowC, warmAboveC, hottestC } = limits;
  const against = (
    weight: FitReason['weight'],
    what: 'too-cold' | 'too-hot' | 'very-slow' | 'slow' | 'warm',
    limitC: number,
  ) =>
    weigh(weight, sentence(`temperature/${what}`, { tempC, limitC }), {
      ...{ figure: tempC, limit: limitC, unit: '°C' },
    });
  if (tempC < coldestC) return against('no', 'too-cold', coldestC);
  if (tempC > hottestC) return against('no', 'too-hot', hottestC);
  if (tempC < verySlowBelowC) return against('poor', 'very-slow', verySlowBelowC);
  if (tempC < slowBelowC) return against('poor', 'slow', slowBelowC);
  if (tempC > warmAboveC) return against('poor', 'warm', warmAboveC);
  const said = sentence('temperature/fine', { tempC, fromC: slowBelowC, toC: warmAboveC });
  return weigh('fine', said, { figure: tempC, limit: slowBelowC, unit: '°C' });
}

function sunReason({ kind, facing, exposure, now, ...site }: BrushQuestion): FitReason[] {
  if (kind !== 'wall' || facing === null) return [];
  const hour = localTime(now, site.timeZone).minute / 60;
  if (sunMayBeOn({ facing, exposure }, hour, site.hemisphere) !== true) return [];
  return [weigh('poor', sentence('sun', { facing }))];
}

function nightReasons(night: NightAhead | null, limits: ApplicationLimits): FitReason[] {
  if (night === null) return [weigh('note', sentence('night-unknown', {}))];
  const { leastMarginK, highestRhPercent, lowC, lowErrorK: errorK } = night;
  const { coldestC, dewMarginK, dampestRhPercent } = limits;
  const low = { figure: lowC, limit: coldestC, unit: '°C' };
  const against: FitReason[] = [];
  if (lowC < coldestC) {
    against.push(weigh('poor', sentence('night-cold', { lowC, errorK, limitC: coldestC }), low));
  }
  if (leastMarginK !== null && leastMarginK < dewMarginK) {
    const said = sentence('night-dew', { marginK: leastMarginK, limitK: dewMarginK });
    against.push(weigh('poor', said, { figure: leastMarginK, limit: dewMarginK, unit: 'K' }));
  } else if (highestRhPercent !== null && highestRhPercent > dampestRhPercent) {
    const told = { rhPercent: highestRhPercent, limitPercent: dampestRhPercent };
    const figures = { figure: highestRhPercent, limit: dampestRhPercent, unit: '%' };
    against.push(weigh('poor', sentence('night-damp', told), figures));
  }
  if (against.length > 0) return against;
  return [weigh('fine', sentence('night', { lowC, errorK }), low)];
}

function moistureReason(question: BrushQuestion, limits: ApplicationLimits): FitReason {
  const { moisture, isBare, now } = question;
  const toMeasure = { boards: limits.boardsMeasured, fromEndCm: limits.fromEndMm / 10 };
  if (moisture === null || moisture.values.length === 0) {
    return weigh(isBare ? 'unknown' : 'poor', sentence('moisture-unknown', toMeasure));
  }
  const worstPercent = Math.max(...moisture.values);
  const limitPercent = limits.dampestWoodPercent;
  const measured = moisture.values.length;
  const figures = { figure: worstPercent, limit: limitPercent, unit: '%' };
  const days = (now - moisture.at) / 86_400_000;
  if (worstPercent > limitPercent) {
    return weigh('no', sentence('moisture/too-wet', { worstPercent, limitPercent }), figures);
  }
  if (days > limits.moistureDays) {
    const told = { ...toMeasure, days: Math.floor(days), worstPercent };
    return weigh('poor', sentence('moisture-old', told), figures);
  }
  const told = { measured, worstPercent, limitPercent };
  if (measured < limits.boardsMeasured) {
    return weigh('poor', sentence('moisture-few', { ...toMeasure, ...told }), figures);
  }
  return weigh('fine', sentence('moisture/dry-enough', told), figures);
}

function shelfReason(shelf: BrushQuestion['shelf']): FitReason[] {
  if (shelf === null) return [];
  const { freeM, usedM, neededM } = shelf;
  if (freeM === null) return [weigh('note', sentence('shelf-unknown', { lyingM: usedM }))];
  const figures = { figure: freeM, limit: neededM, unit: 'm' };
  if (neededM === null) return [weigh('fine', sentence('shelf', { freeM }), figures)];
  const isShort = neededM > freeM;
  const said = sentence(isShort ? 'shelf/short' : 'shelf/needed', { freeM, neededM });
  return [weigh(isShort ? 'poor' : 'fine', said, figures)];
}

function solventReasons({ solvent, kind }: BrushQuestion): FitReason[] {
  if (kind === 'wall' || kind === 'outdoors') return [];
  const weights: Record<string, FitReason['weight']> = {
    'solvent-explosive': 'no',
    'solvent-air-needed': 'poor',
  };
  return solvent.map((said) => weigh(weights[said.code] ?? 'note', said));
}
