import { ahead } from './en/ahead.ts';
import { air } from './en/air.ts';
import { digest } from './en/digest.ts';
import { fault } from './en/fault.ts';
import { fit } from './en/fit.ts';
import { help } from './en/help.ts';
import { lockUp } from './en/lock-up.ts';
import { notice } from './en/notice.ts';
import { paint } from './en/paint.ts';
import { remark } from './en/remark.ts';
import { site } from './en/site.ts';
import { solvent } from './en/solvent.ts';
import { text } from './en/text.ts';
import { timber } from './en/timber.ts';
import { verdict } from './en/verdict.ts';
import { work } from './en/work.ts';
import type { Wording } from './sentence.ts';

/** Every sentence in English. */
export const en: Wording = {
  ...ahead,
  ...air,
  ...digest,
  ...fault,
  ...fit,
  ...help,
  ...lockUp,
  ...notice,
  ...paint,
  ...remark,
  ...site,
  ...solvent,
  ...text,
  ...timber,
  ...verdict,
  ...work,
};
