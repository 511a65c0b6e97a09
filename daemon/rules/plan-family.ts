import type { PlanFact } from './facts.ts';

const familyOf = (plan: PlanFact): string => plan.familyId ?? plan.id;
const versionOf = (plan: PlanFact): number => plan.version ?? 1;

/** All versions of the family that a plan belongs to, the newest first. */
export function versionsOf(plan: PlanFact, plans: Iterable<PlanFact>): PlanFact[] {
  return [...plans]
    .filter((other) => familyOf(other) === familyOf(plan))
    .sort((a, b) => versionOf(b) - versionOf(a));
}

/** The version of a plan that new batches go by. */
export function newestOf(plan: PlanFact, plans: Iterable<PlanFact>): PlanFact {
  return versionsOf(plan, plans)[0] ?? plan;
}

/** The newest version of every plan, in the order the families were begun. */
export function newestPlans(plans: Iterable<PlanFact>): PlanFact[] {
  const newest = new Map<string, PlanFact>();
  for (const plan of plans) {
    const known = newest.get(familyOf(plan));
    if (!known || versionOf(plan) > versionOf(known)) newest.set(familyOf(plan), plan);
  }
  return [...newest.values()];
}
