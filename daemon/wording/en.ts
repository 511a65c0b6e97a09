import { access } from './en/access.ts';
import { ahead } from './en/ahead.ts';
import { air } from './en/air.ts';
import { calendar } from './en/calendar.ts';
import { calibration } from './en/calibration.ts';
import { delivery } from './en/delivery.ts';
import { detail } from './en/detail.ts';
import { digest } from './en/digest.ts';
import { fault } from './en/fault.ts';
import { field } from './en/field.ts';
import { fit } from './en/fit.ts';
import { help } from './en/help.ts';
import { lockUp } from './en/lock-up.ts';
import { name } from './en/name.ts';
import { notice } from './en/notice.ts';
import { paint } from './en/paint.ts';
import { payload } from './en/payload.ts';
import { problem } from './en/problem.ts';
import { remark } from './en/remark.ts';
import { setting } from './en/setting.ts';
import { site } from './en/site.ts';
import { solvent } from './en/solvent.ts';
import { text } from './en/text.ts';
import { timber } from './en/timber.ts';
import { topicRule } from './en/topic-rule.ts';
import { verdict } from './en/verdict.ts';
import { work } from './en/work.ts';
import type { Wording } from './sentence.ts';

/** Every sentence in English. */
export const en: Wording = {
  ...access,
  ...ahead,
  ...air,
  ...calendar,
  ...calibration,
  ...detail,
  ...digest,
  ...fault,
  ...field,
  ...fit,
  ...help,
  ...lockUp,
  ...name,
  ...notice,
  ...paint,
  ...problem,
  ...remark,
  ...setting,
  ...site,
  ...solvent,
  ...text,
  ...timber,
  ...verdict,
  ...work,
  ...delivery,
  ...payload,
  ...topicRule,
};
