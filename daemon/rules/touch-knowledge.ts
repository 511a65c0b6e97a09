import type { Gate } from '../contract/gate.ts';
import type { Mixture } from '../contract/plan.ts';
import { gateNeeds } from './gate-need.ts';

/** A touch test with the coat’s sum at that time, °C·h. */
export interface FeltTest {
  gate: Gate;
  passed: boolean;
  at: number;
  degreeHours: number;
}

/** What is learned of one coat helps the others of its mixture and colour. */
export function mixtureKey(mixture: Mixture, colour: string | null): string {
  const total = mixture.paint + mixture.rawLinseedOil + mixture.turpentine;
  const share = (part: number) => Math.round((part / total) * 1000);
  const parts = [mixture.paint, mixture.rawLinseedOil, mixture.turpentine].map(share).join(':');
  return `${parts} ${(colour ?? '').trim().toLowerCase()}`;
}

/** A later failed test of the same job takes back an earlier pass. */
function standing(tests: readonly FeltTest[]): FeltTest[] {
  return tests.filter(
    (test) =>
      !test.passed ||
      !tests.some((later) => later.gate === test.gate && !later.passed && later.at > test.at),
  );
}

/**
 * What one coat’s tests say of the need for recoating, for learning from it.
 *
 * Only the most demanding job that was tested speaks: carried over from an easy one, the assumed
 * multiples would say more than anybody felt.
 *
 * @param film - factor of this coat’s film on what it needs
 * @returns °C·h as for recoating a reference film; null when nothing was tested
 */
export function learnedFrom(
  tests: readonly FeltTest[],
  film: number,
): { failedAt?: number; passedAt?: number } | null {
  const hardest = [...standing(tests)].sort(
    (a, b) => gateNeeds[b.gate].multiple - gateNeeds[a.gate].multiple,
  )[0]?.gate;
  if (hardest === undefined) return null;
  const scale = gateNeeds[hardest].multiple * film;
  const of = standing(tests).filter((test) => test.gate === hardest && test.degreeHours > 0);
  const failed = of.filter((test) => !test.passed).map((test) => test.degreeHours / scale);
  const passed = of.filter((test) => test.passed).map((test) => test.degreeHours / scale);
  const failedAt = failed.length > 0 ? Math.max(...failed) : undefined;
  const passedAt = passed.length > 0 ? Math.min(...passed) : undefined;
  if (failedAt === undefined && passedAt === undefined) return null;
  if (failedAt !== undefined && passedAt !== undefined && failedAt >= passedAt) {
    return { failedAt };
  }
  return {
    ...(failedAt === undefined ? {} : { failedAt }),
    ...(passedAt === undefined ? {} : { passedAt }),
  };
}

/**
 * What this coat’s own tests settle for a job: a failed test of it or of an easier one says that it
 * needs more, a passed test of it or of a harder one that it does not.
 *
 * @returns °C·h of this coat; null where nothing was felt
 */
export function ownTests(
  tests: readonly FeltTest[],
  gate: Gate,
): { failedAt: number | null; passedAt: number | null } {
  const felt = standing(tests);
  const failed = felt.filter(
    (test) => !test.passed && (test.gate === gate || gateNeeds[gate].easier.includes(test.gate)),
  );
  const failedAt = failed.length === 0 ? null : Math.max(...failed.map((test) => test.degreeHours));
  const passed = felt.filter(
    (test) =>
      test.passed &&
      (test.gate === gate || gateNeeds[test.gate].easier.includes(gate)) &&
      (failedAt === null || test.degreeHours > failedAt),
  );
  return {
    failedAt,
    passedAt: passed.length === 0 ? null : Math.min(...passed.map((test) => test.degreeHours)),
  };
}
