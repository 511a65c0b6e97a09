import type { FaultEffect, FaultKind } from './sensor-fault.ts';

/** What each fault of a sensor does to verdicts, and so what its sentence ends with. */
export const faultEffects: Readonly<Record<FaultKind, FaultEffect>> = {
  silent: 'none',
  stuck: 'not-counted',
  jumps: 'not-counted',
  'out-of-physics': 'not-counted',
  drift: 'not-counted',
  'pinned-humidity': 'humidity-not-counted',
  'swapped-places': 'none',
  'low-battery': 'none',
  'time-wrong': 'not-counted',
};
