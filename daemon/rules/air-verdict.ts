import type { Reason } from '../contract/gate.ts';
import type { AirChange } from '../science/airflow.ts';

export type Airflow = 'good' | 'poor' | 'cannot-tell';

/** What cheap sensors can tell of the air at a place over the last day. */
export interface AirEvidence {
  /** Air changes of the enclosing room, from its water-vapour balance; null where never asked. */
  airChange: AirChange | null;
  /** Share of the last hours in which a rack was moister than its room by more than the limit. */
  stagnantShare: number | null;
  /** Mean of that excess, g/m³. */
  excessGM3: number | null;
  /** Share of the last hours in which the humidity was above the limit. */
  dampShare: number | null;
  /** Mean of the humidity over them, %. */
  rhPercent: number | null;
  /** How much colder a rack is than the warmest one of its room, K. */
  colderByK: number | null;
  /** True while timber there is known to be still drying, or a coat is only hours old. */
  givesOffWater: boolean;
  /** True while boards lie in the room: they take up and give off vapour, so that it seems to stay. */
  buffered: boolean;
}

export interface AirVerdict {
  airflow: Airflow;
  reasons: Reason[];
}

/** Limits of the air verdict. All assumptions, to be judged against the shed. */
export const airLimits = {
  /** Below this the air of a room is changed too seldom, above the other often enough, per hour. */
  poorPerHour: 0.5,
  goodPerHour: 1,
  /** A rack moister than its room by more than this is a pocket of still air, g/m³. */
  excessGM3: 1,
  /** More humid than this for most of the time slows a coat and feeds mould, %. */
  rhPercent: 80,
  /** How long both are looked at, h, and for how much of it they must hold. */
  lookBackHours: 12,
  persistentShare: 0.8,
  /** A rack colder than another by more than this is worth a word, K. */
  colderByK: 3,
} as const;

const persistent = (share: number | null) => share !== null && share >= airLimits.persistentShare;

/**
 * What is to be said of the air at a place. Good needs evidence, poor needs evidence; without either
 * it cannot be told.
 */
export function airVerdict(evidence: AirEvidence): AirVerdict {
  const { airChange, excessGM3, rhPercent, colderByK } = evidence;
  const reasons: Reason[] = [];
  const known = airChange?.identifiable ? airChange : null;
  const few = known?.high !== undefined && known.high < airLimits.poorPerHour;
  // Boards hold vapour back, so the balance shows too little: on its own it then proves nothing.
  const slow = few && !evidence.buffered;
  if (slow && known) {
    reasons.push({
      code: 'air-changes-few',
      text: `${changesWords(known)} Open up, unless it is wetter outside. No fan on wet film.`,
    });
  }
  const stagnant = persistent(evidence.stagnantShare) && excessGM3 !== null;
  if (stagnant) {
    reasons.push({
      code: evidence.givesOffWater ? 'air-moister-drying' : 'air-stagnant',
      text: evidence.givesOffWater
        ? `Moister between the boards than in the room by ${excessGM3.toFixed(1)} g/m³; timber that still dries does that too.`
        : `Still air between the boards: moister than the room by ${excessGM3.toFixed(1)} g/m³. Space them out or let air through.`,
    });
  }
  const damp = persistent(evidence.dampShare) && rhPercent !== null;
  if (damp) {
    reasons.push({
      code: 'air-damp-long',
      text: `Damp for most of the last ${airLimits.lookBackHours} hours: ${Math.round(rhPercent)} % on average. Change the air when it is drier outside, or dry it.`,
    });
  }
  if (colderByK !== null && colderByK > airLimits.colderByK) {
    reasons.push({
      code: 'rack-colder',
      text: `Colder than another rack in this room by ${colderByK.toFixed(1)} K: its boards cure later.`,
    });
  }
  if (slow || damp || (stagnant && !evidence.givesOffWater)) return { airflow: 'poor', reasons };
  const fast = known?.low !== undefined && known.low >= airLimits.goodPerHour;
  if (known && fast && !stagnant) {
    reasons.push({
      code: 'air-changes-enough',
      text: changesWords(known),
    });
    return { airflow: 'good', reasons };
  }
  reasons.push({ code: 'air-cannot-tell', text: whyNot(airChange) });
  return { airflow: 'cannot-tell', reasons };
}

function whyNot(airChange: AirChange | null): string {
  if (airChange === null) {
    return 'Air changes cannot be told: it takes temperature and humidity here and outdoors.';
  }
  if (airChange.identifiable) {
    const few = (airChange.high ?? 0) < airLimits.poorPerHour;
    return few
      ? `${changesWords(airChange)} That is little, but boards take up and give off moisture, which makes it look less than it is.`
      : `${changesWords(airChange)} Neither clearly few nor clearly enough.`;
  }
  const because: Record<NonNullable<AirChange['reason']>, string> = {
    'too-few-samples': 'there are too few readings of the last day yet',
    'too-short': 'the readings do not reach back far enough yet',
    flat: 'the moisture of the air hardly changed',
    'does-not-fit': 'something else than fresh air moves the moisture here',
    'too-uncertain': 'the readings allow too many answers',
  };
  return `Air changes cannot be told: ${because[airChange.reason ?? 'too-uncertain']}.`;
}

function changesWords({ perHour = 0, low = 0, high = 0 }: AirChange): string {
  const [rate, from, to] = [perHour, low, high].map((value) => Number(value.toPrecision(2)));
  return `The air is changed about ${rate} times an hour (${from} to ${to}, rough).`;
}
