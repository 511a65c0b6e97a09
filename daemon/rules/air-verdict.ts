import type { Reason } from '../contract/gate.ts';
import type { AirChange } from '../science/airflow.ts';
import { sentence } from '../wording/english.ts';

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
    reasons.push(sentence('air-changes-few', changesOf(known)));
  }
  const stagnant = persistent(evidence.stagnantShare) && excessGM3 !== null;
  if (stagnant) {
    const code = evidence.givesOffWater ? 'air-moister-drying' : 'air-stagnant';
    reasons.push(sentence(code, { gramsPerM3: excessGM3 }));
  }
  const damp = persistent(evidence.dampShare) && rhPercent !== null;
  if (damp) {
    reasons.push(sentence('air-damp-long', { hours: airLimits.lookBackHours, rhPercent }));
  }
  if (colderByK !== null && colderByK > airLimits.colderByK) {
    reasons.push(sentence('rack-colder', { differenceK: colderByK }));
  }
  if (slow || damp || (stagnant && !evidence.givesOffWater)) return { airflow: 'poor', reasons };
  const fast = known?.low !== undefined && known.low >= airLimits.goodPerHour;
  if (known && fast && !stagnant) {
    reasons.push(sentence('air-changes-enough', changesOf(known)));
    return { airflow: 'good', reasons };
  }
  reasons.push(whyNot(airChange));
  return { airflow: 'cannot-tell', reasons };
}

function whyNot(airChange: AirChange | null): Reason {
  if (airChange === null) return sentence('air-cannot-tell/not-measured', {});
  if (airChange.identifiable) {
    const few = (airChange.high ?? 0) < airLimits.poorPerHour;
    return sentence(few ? 'air-cannot-tell/few' : 'air-cannot-tell/between', changesOf(airChange));
  }
  return sentence(`air-cannot-tell/${airChange.reason ?? 'too-uncertain'}`, {});
}

const changesOf = ({ perHour = 0, low = 0, high = 0 }: AirChange) => ({ perHour, low, high });
