import type { Quantity } from '../../contract/quantity.ts';
import type { FaultKind } from '../../contract/sensor-fault.ts';
import type { Sentence, Told } from '../../contract/sentence.ts';

/** A fault that stands now, as a detector sees it. */
export interface Standing {
  /** From when on the readings are not to be believed. */
  fromAt: number;
  /** What was seen, as a sentence … */
  says: string;
  /** … and what it tells; null where only the text was kept. */
  told: Told | null;
}

/** What a detector says of a sensor: what stands, and since when it is believed again. */
export interface Finding {
  standing: Standing | null;
  /** When the last fault of this kind was over; null when there was none since the start. */
  overAt: number | null;
  /** Whether it changed since anyone asked. */
  stirred: boolean;
}

/** A finding with what it is about. */
export interface NamedFinding extends Finding {
  sensorKey: number;
  quantity: Quantity | null;
  kind: FaultKind;
}

export const nothingFound = (): Finding => ({ standing: null, overAt: null, stirred: false });

/** Raises a fault, or leaves one that stands as it began. */
export function raise(finding: Finding, fromAt: number, seen: Sentence): void {
  if (finding.standing !== null) return;
  const { code, text: says, values } = seen;
  finding.standing = { fromAt, says, told: values === undefined ? null : { code, values } };
  finding.stirred = true;
}

/** Ends a fault that stands. */
export function end(finding: Finding, overAt: number): void {
  if (finding.standing === null) return;
  finding.overAt = Math.max(finding.standing.fromAt, overAt);
  finding.standing = null;
  finding.stirred = true;
}

export const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
