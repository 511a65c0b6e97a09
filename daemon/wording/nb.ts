import { access } from './nb/access.ts';
import { ahead } from './nb/ahead.ts';
import { air } from './nb/air.ts';
import { calendar } from './nb/calendar.ts';
import { calibration } from './nb/calibration.ts';
import { delivery } from './nb/delivery.ts';
import { detail } from './nb/detail.ts';
import { digest } from './nb/digest.ts';
import { fault } from './nb/fault.ts';
import { field } from './nb/field.ts';
import { fit } from './nb/fit.ts';
import { help } from './nb/help.ts';
import { lockUp } from './nb/lock-up.ts';
import { name } from './nb/name.ts';
import { notice } from './nb/notice.ts';
import { paint } from './nb/paint.ts';
import { payload } from './nb/payload.ts';
import { problem } from './nb/problem.ts';
import { remark } from './nb/remark.ts';
import { setting } from './nb/setting.ts';
import { site } from './nb/site.ts';
import { solvent } from './nb/solvent.ts';
import { text } from './nb/text.ts';
import { timber } from './nb/timber.ts';
import { topicRule } from './nb/topic-rule.ts';
import { verdict } from './nb/verdict.ts';
import { work } from './nb/work.ts';
import type { Wording } from './sentence.ts';

/** Every sentence in Norwegian bokmål. */
export const nb: Wording = {
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
