import type { Coat } from '../contract/coat.ts';
import { gates } from '../contract/gate.ts';
import { sentence } from '../wording/english.ts';

/** Whether boards of a coat are behind others of it. */
export function isSlower(one: Coat, other: Coat): boolean {
  const [a, b] = [one.gates.recoat.probability, other.gates.recoat.probability];
  return a < b || (a === b && one.degreeHours < other.degreeHours);
}

/** A coat of boards that were put together: what was recorded of it, and the verdict of the slower. */
export function speakingFor(
  own: Coat,
  slower: Coat,
  speaksFor: NonNullable<Coat['speaksFor']>,
): Coat {
  const reason = sentence('slower-boards', { batchName: speaksFor.name });
  const { id, usedL, colour, tin, tinId, planId, areaM2, spreadingM2PerL, inherited } = own;
  return {
    ...slower,
    ...{ id, usedL, colour, tin, tinId, planId, areaM2, spreadingM2PerL, inherited, speaksFor },
    gates: Object.fromEntries(
      gates.map((gate) => {
        const verdict = slower.gates[gate];
        return [gate, { ...verdict, reasons: [...verdict.reasons, reason] }];
      }),
    ) as Coat['gates'],
  };
}
