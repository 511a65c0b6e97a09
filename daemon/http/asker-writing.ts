import type { Overview } from '../contract/overview.ts';
import { mayDo } from '../rules/role.ts';
import type { Asker } from './access-gate.ts';
import type { AccessPort } from './access-port.ts';

export type Writing = Pick<Overview, 'mayWrite' | 'writing'>;

export const grants = {
  granted: { mayWrite: true, writing: 'granted' },
  'after-log-in': { mayWrite: false, writing: 'after-log-in' },
  'from-the-computer': { mayWrite: false, writing: 'from-the-computer' },
} as const satisfies Record<Overview['writing'], Writing>;

/** Whether records are taken from whoever asks, and if not, what it would take. */
export function writingOf({ role }: Asker, access: AccessPort): Writing {
  if (mayDo(role, 'operate')) return grants.granted;
  return access.state().pinSet ? grants['after-log-in'] : grants['from-the-computer'];
}
