import { laggingBoards } from './board-warming.ts';
import { airedRoom, driedAir, type GasBurner, heatedAir, type MoreAir } from './changed-air.ts';
import type { CureModel } from './cure.ts';
import { type CureAheadOptions, cureAhead } from './cure-ahead.ts';
import { dewMargin } from './dew-margin.ts';
import { type CureSoFar, type ReadyOptions, type ReadyTimes, readyFrom } from './forecast.ts';
import type { NeedCurve } from './need-curve.ts';
import type { TemperatureOutlook } from './temperature-outlook.ts';

/** What might be done to the air at a place. */
export type AirChoice =
  | { readonly kind: 'leave' }
  | {
      readonly kind: 'heat';
      /** °C, −40 to 60 */
      readonly toTempC: number;
      /** time in which boards go 63 % of the way, h, above 0: see `estimatedWarmingHours` */
      readonly boardLagHours: number;
      /** an unvented gas burner */
      readonly burner?: GasBurner | undefined;
    }
  | {
      readonly kind: 'dehumidify';
      /** %, 1 to 100 */
      readonly toRhPercent: number;
    }
  | {
      readonly kind: 'open-door';
      readonly outdoors: TemperatureOutlook;
      readonly air: MoreAir;
      /** h, above 0 */
      readonly boardLagHours: number;
    };

/** How well a figure is supported, as in EVIDENCE.md. */
export type EvidenceMark = 'measured' | 'practice' | 'assumption';

/** What an answer rests on, or a caution that belongs to it. */
export type Ground = {
  readonly code:
    | 'vapour-unchanged'
    | 'boards-lag'
    | 'gas-makes-vapour'
    | 'dryer-warmth-left-out'
    | 'well-mixed'
    | 'no-humidity-rate'
    | 'outlook'
    | 'fire-and-fumes'
    | 'wet-air-outside';
  readonly mark: EvidenceMark;
  readonly says: string;
};

/** What would come of a choice. */
export type WhatIf = {
  readonly ready: ReadyTimes;
  /** boards and the air at them, hour by hour */
  readonly boardTempC: readonly number[];
  readonly air: TemperatureOutlook;
  /** smallest distance of the boards from the dew point over the coming day, K; null where humidity is unknown */
  readonly leastDewMarginK: number | null;
  readonly grounds: readonly Ground[];
};

/** The coat and gate that are asked about. */
export type WhatIfQuestion = {
  readonly cureSoFar: CureSoFar;
  readonly need: NeedCurve;
  readonly model: CureModel;
} & CureAheadOptions &
  ReadyOptions;

/** Hours in which dew is looked for. */
const FIRST_DAY_HOURS = 24;

const OUTLOOK: Ground = {
  code: 'outlook',
  mark: 'measured',
  says: 'Carried on from the recorded days; its error was set on recordings of other places.',
};
const BOARDS_LAG: Ground = {
  code: 'boards-lag',
  mark: 'assumption',
  says: 'Boards follow the air with an estimated lag, right within a factor of two.',
};
const NO_HUMIDITY_RATE: Ground = {
  code: 'no-humidity-rate',
  mark: 'assumption',
  says: 'Drier air keeps dew and damp timber away; by itself it is not reckoned to cure faster.',
};

/** The air at the place if a choice is made. */
function chosenAir(outlook: TemperatureOutlook, choice: AirChoice): TemperatureOutlook {
  switch (choice.kind) {
    case 'leave':
      return outlook;
    case 'heat':
      return heatedAir(outlook, choice.toTempC, choice.burner ?? null);
    case 'dehumidify':
      return driedAir(outlook, choice.toRhPercent);
    case 'open-door':
      return airedRoom(outlook, choice.outdoors, choice.air);
  }
}

function groundsOf(choice: AirChoice, model: CureModel): Ground[] {
  const grounds = [OUTLOOK];
  if (choice.kind === 'heat') {
    grounds.push(
      {
        code: 'vapour-unchanged',
        mark: 'assumption',
        says: 'Best case: the air warms and its water stays the same. Warm timber gives off water.',
      },
      BOARDS_LAG,
      {
        code: 'fire-and-fumes',
        mark: 'practice',
        says: 'Flames, hot surfaces and sparks can set solvent vapour and oily rags alight, and unvented burners make carbon monoxide: follow the heater’s instructions and local rules.',
      },
    );
    if (choice.burner !== undefined) {
      grounds.push({
        code: 'gas-makes-vapour',
        mark: 'assumption',
        says: 'The burner’s own water is counted, in a well-mixed room.',
      });
    }
  }
  if (choice.kind === 'dehumidify') {
    grounds.push({
      code: 'dryer-warmth-left-out',
      mark: 'assumption',
      says: 'The dryer is taken as strong enough; the little warmth it gives is left out.',
    });
  }
  if (choice.kind === 'open-door') {
    grounds.push(
      {
        code: 'well-mixed',
        mark: 'assumption',
        says: 'A well-mixed room with steady sources; the most its warmth can change.',
      },
      BOARDS_LAG,
      {
        code: 'wet-air-outside',
        mark: 'practice',
        says: 'Shut up in the evening when the air outside is wetter.',
      },
    );
  }
  if (choice.kind !== 'leave' && model.humidity === undefined) grounds.push(NO_HUMIDITY_RATE);
  return grounds;
}

/**
 * When a coat would be there if the air were heated, dried or changed.
 *
 * @param outlook - the air at the place as it is expected
 * @param choice - what is done, from `outlook.fromAt` on
 * @param question - the coat, the gate and the rate model
 * @returns times, boards, air, distance from dew, and what each rests on; `leave` gives the same
 *   times as `readyFrom`
 * @throws RangeError outside the range
 */
export function whatIf(
  outlook: TemperatureOutlook,
  choice: AirChoice,
  question: WhatIfQuestion,
): WhatIf {
  const air = chosenAir(outlook, choice);
  const boardTempC =
    choice.kind === 'heat' || choice.kind === 'open-door'
      ? laggingBoards(outlook.tempC, air.tempC, choice.boardLagHours)
      : air.tempC;
  const ahead = cureAhead({ ...air, tempC: boardTempC }, question.model, question);
  return {
    ready: readyFrom(ahead, question.cureSoFar, question.need, question),
    boardTempC,
    air,
    leastDewMarginK: leastDewMargin(boardTempC, air),
    grounds: groundsOf(choice, question.model),
  };
}

function leastDewMargin(boardTempC: readonly number[], air: TemperatureOutlook): number | null {
  const { rhPercent, tempC } = air;
  if (rhPercent === null) return null;
  const margins = boardTempC
    .slice(0, FIRST_DAY_HOURS)
    .map((surface, hour) =>
      dewMargin(surface, { tempC: tempC[hour] as number, rhPercent: rhPercent[hour] as number }),
    );
  return Math.min(...margins);
}
