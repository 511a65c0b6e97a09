import type { Gate } from '../../daemon/contract/gate.ts';

/** The jobs in the order of what they need. */
export const jobsInOrder: readonly Gate[] = ['turn', 'stack', 'mount', 'sand', 'recoat'];
