import type { GateChange } from '../contract/coat.ts';
import { type Gate, type GateVerdict, gates } from '../contract/gate.ts';

/** Chances and times that move by less are not news. Assumption. */
const leastChance = 0.02;
const leastMs = 30 * 60_000;

/** What changed about the jobs of a coat, worth telling whoever has just felt it. */
export function gateChanges(
  before: Readonly<Record<Gate, GateVerdict>>,
  after: Readonly<Record<Gate, GateVerdict>>,
): GateChange[] {
  return gates.flatMap((gate) => {
    const [was, is] = [before[gate], after[gate]];
    const sameTime =
      was.likely === null || is.likely === null
        ? was.likely === is.likely
        : Math.abs(Date.parse(was.likely) - Date.parse(is.likely)) < leastMs;
    if (
      was.verdict === is.verdict &&
      sameTime &&
      Math.abs(was.probability - is.probability) < leastChance
    ) {
      return [];
    }
    return [{ gate, before: then(was), after: then(is) }];
  });
}

const then = ({ verdict, probability, likely }: GateVerdict) => ({ verdict, probability, likely });
