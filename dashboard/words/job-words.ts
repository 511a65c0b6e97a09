import type { Gate } from '../../daemon/contract/gate.ts';

import { jobs as words } from './en/jobs.ts';

export const jobs = words;

/** The jobs in the order of what they need. */
export const jobsInOrder: readonly Gate[] = ['turn', 'stack', 'mount', 'sand', 'recoat'];
