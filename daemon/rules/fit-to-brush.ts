import type { FitReason, FitWord } from '../contract/fit-to-brush.ts';
import type { PlaceKind } from '../contract/place.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
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
  solvent: readonly { code: string; text: string }[];
  now: number;
  timeZone: string;
  hemisphere: Hemisphere;
}

type Part = Pick<FitReason, 'code' | 'weight' | 'text'> & Partial<FitReason>;
const reason = (part: Part): FitReason => ({ figure: null, limit: null, unit: null, ...part });
const one = (value: number) => value.toFixed(1);

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
      ? [
          reason({
            code: 'floor',
            weight: 'note',
            text: 'Sweep the floor and damp it the day before, and let the dust settle: none of it today.',
          }),
        ]
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

export const brushWords: Record<FitWord, string> = {
  good: 'Fit to brush.',
  poor: 'It can be done, but something is against it.',
  no: 'Not now.',
  'cannot-tell': 'Cannot be told: something is not known.',
};

function airReasons(air: AirNow, limits: ApplicationLimits): FitReason[] {
  const { tempC, rhPercent } = air;
  if (tempC === null || air.stale) {
    const text =
      'There is no fresh reading of the air here: look at temperature and damp yourself.';
    return [reason({ code: 'air-unknown', weight: 'unknown', text })];
  }
  const reasons = [temperatureReason(tempC, limits)];
  const margin = marginOf({ tempC, rhPercent });
  if (rhPercent === null || margin === null) {
    const text = 'Nothing reads the humidity here, so the dew point is not known.';
    return [...reasons, reason({ code: 'humidity-unknown', weight: 'unknown', text })];
  }
  const damp = rhPercent > limits.dampestRhPercent;
  reasons.push(
    reason({
      code: 'humidity',
      weight: damp ? 'no' : 'fine',
      text: `${damp ? 'Too damp' : 'Dry enough'}: ${Math.round(rhPercent)} % humidity, at most ${limits.dampestRhPercent} %.`,
      ...{ figure: rhPercent, limit: limits.dampestRhPercent, unit: '%' },
    }),
  );
  const near = margin < limits.dewMarginK;
  reasons.push(
    reason({
      code: 'dew-margin',
      weight: near ? 'no' : 'fine',
      text: `${near ? 'Too near the dew point' : 'Clear of the dew point'}: ${one(margin)} K above it, at least ${limits.dewMarginK} K. Boards that come in from the cold are nearer.`,
      ...{ figure: margin, limit: limits.dewMarginK, unit: 'K' },
    }),
  );
  return reasons;
}

function temperatureReason(tempC: number, limits: ApplicationLimits): FitReason {
  const said = (weight: FitReason['weight'], text: string, limit: number) =>
    reason({
      code: 'temperature',
      weight,
      text: `${one(tempC)} °C: ${text}`,
      ...{ figure: tempC, limit, unit: '°C' },
    });
  const { coldestC, verySlowBelowC, slowBelowC, warmAboveC, hottestC } = limits;
  if (tempC < coldestC) return said('no', `too cold, at least ${coldestC} °C.`, coldestC);
  if (tempC > hottestC) return said('no', `too hot, at most ${hottestC} °C.`, hottestC);
  if (tempC < verySlowBelowC) return said('poor', 'it will dry very slowly.', verySlowBelowC);
  if (tempC < slowBelowC) return said('poor', 'it will dry slowly; brush it out thin.', slowBelowC);
  if (tempC > warmAboveC) {
    return said('poor', 'warm; thin coats, small stretches, or wait for the evening.', warmAboveC);
  }
  return said('fine', `between ${slowBelowC} and ${warmAboveC} °C.`, slowBelowC);
}

function sunReason({ kind, facing, exposure, now, ...site }: BrushQuestion): FitReason[] {
  if (kind !== 'wall' || facing === null) return [];
  const hour = localTime(now, site.timeZone).minute / 60;
  if (sunMayBeOn({ facing, exposure }, hour, site.hemisphere) !== true) return [];
  const text = `The sun may stand on a ${facing} wall now: never brush in direct sun, follow the shade around the house.`;
  return [reason({ code: 'sun', weight: 'poor', text })];
}

function nightReasons(night: NightAhead | null, limits: ApplicationLimits): FitReason[] {
  if (night === null) {
    const text = 'The first night cannot be told: the readings do not reach back far enough yet.';
    return [reason({ code: 'night-unknown', weight: 'note', text })];
  }
  const { leastMarginK, highestRhPercent, lowC } = night;
  const against: FitReason[] = [];
  if (lowC < limits.coldestC) {
    against.push(
      reason({
        code: 'night-cold',
        weight: 'poor',
        text: `The first night falls to about ${one(lowC)} °C (± ${one(night.lowErrorK)} K); below ${limits.coldestC} °C the coat stands still.`,
        ...{ figure: lowC, limit: limits.coldestC, unit: '°C' },
      }),
    );
  }
  if (leastMarginK !== null && leastMarginK < limits.dewMarginK) {
    against.push(
      reason({
        code: 'night-dew',
        weight: 'poor',
        text: `In the first night the boards come to about ${one(leastMarginK)} K above the dew point, at least ${limits.dewMarginK} K: the wet film may dull or streak.`,
        ...{ figure: leastMarginK, limit: limits.dewMarginK, unit: 'K' },
      }),
    );
  } else if (highestRhPercent !== null && highestRhPercent > limits.dampestRhPercent) {
    against.push(
      reason({
        code: 'night-damp',
        weight: 'poor',
        text: `In the first night the air gets to about ${Math.round(highestRhPercent)} %, at most ${limits.dampestRhPercent} %.`,
        ...{ figure: highestRhPercent, limit: limits.dampestRhPercent, unit: '%' },
      }),
    );
  }
  if (against.length > 0) return against;
  const text = `The first night stays within the limits: lowest about ${one(lowC)} °C (± ${one(night.lowErrorK)} K).`;
  const figures = { figure: lowC, limit: limits.coldestC, unit: '°C' };
  return [reason({ code: 'night', weight: 'fine', text, ...figures })];
}

function moistureReason(question: BrushQuestion, limits: ApplicationLimits): FitReason {
  const { moisture, isBare, now } = question;
  const five = `Measure ${limits.boardsMeasured} boards 30 cm from the end and type in the figures.`;
  if (moisture === null || moisture.values.length === 0) {
    return reason({
      code: 'moisture-unknown',
      weight: isBare ? 'unknown' : 'poor',
      text: `Nobody has measured the timber. ${five}`,
    });
  }
  const worst = Math.max(...moisture.values);
  const limit = limits.dampestWoodPercent;
  const figures = { figure: worst, limit, unit: '%' };
  const days = (now - moisture.at) / 86_400_000;
  if (worst > limit) {
    const text = `Timber too wet: the worst board has ${one(worst)} %, at most ${limit} %.`;
    return reason({ code: 'moisture', weight: 'no', text, ...figures });
  }
  if (days > limits.moistureDays) {
    const text = `The timber was last measured ${Math.floor(days)} days ago (worst ${one(worst)} %). ${five}`;
    return reason({ code: 'moisture-old', weight: 'poor', text, ...figures });
  }
  if (moisture.values.length < limits.boardsMeasured) {
    const text = `Only ${moisture.values.length} measured (worst ${one(worst)} %, at most ${limit} %). ${five}`;
    return reason({ code: 'moisture-few', weight: 'poor', text, ...figures });
  }
  const text = `Timber dry enough: the worst of ${moisture.values.length} boards has ${one(worst)} %, at most ${limit} %.`;
  return reason({ code: 'moisture', weight: 'fine', text, ...figures });
}

function shelfReason(shelf: BrushQuestion['shelf']): FitReason[] {
  if (shelf === null) return [];
  const { freeM, usedM, neededM } = shelf;
  if (freeM === null) {
    const text = `Free shelf is not known: nobody has entered how much the racks hold; ${one(usedM)} m lie on them.`;
    return [reason({ code: 'shelf-unknown', weight: 'note', text })];
  }
  const figures = { figure: freeM, limit: neededM, unit: 'm' };
  const isShort = neededM !== null && neededM > freeM;
  const needed = neededM === null ? '' : `, these boards take ${one(neededM)} m`;
  const text = `${one(freeM)} m of shelf are free${needed}.${isShort ? ' Coat only what can be laid down.' : ''}`;
  return [reason({ code: 'shelf', weight: isShort ? 'poor' : 'fine', text, ...figures })];
}

function solventReasons({ solvent, kind }: BrushQuestion): FitReason[] {
  if (kind === 'wall' || kind === 'outdoors') return [];
  return solvent.map(({ code, text }) =>
    reason({
      code,
      weight: code === 'solvent-explosive' ? 'no' : code === 'solvent-air-needed' ? 'poor' : 'note',
      text,
    }),
  );
}
