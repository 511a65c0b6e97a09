import type { Wording } from './sentence.ts';
import { access } from './sv/access.ts';
import { ahead } from './sv/ahead.ts';
import { air } from './sv/air.ts';
import { calendar } from './sv/calendar.ts';
import { calibration } from './sv/calibration.ts';
import { delivery } from './sv/delivery.ts';
import { detail } from './sv/detail.ts';
import { digest } from './sv/digest.ts';
import { fault } from './sv/fault.ts';
import { field } from './sv/field.ts';
import { fit } from './sv/fit.ts';
import { help } from './sv/help.ts';
import { lockUp } from './sv/lock-up.ts';
import { name } from './sv/name.ts';
import { notice } from './sv/notice.ts';
import { paint } from './sv/paint.ts';
import { payload } from './sv/payload.ts';
import { problem } from './sv/problem.ts';
import { remark } from './sv/remark.ts';
import { setting } from './sv/setting.ts';
import { site } from './sv/site.ts';
import { solvent } from './sv/solvent.ts';
import { text } from './sv/text.ts';
import { timber } from './sv/timber.ts';
import { topicRule } from './sv/topic-rule.ts';
import { verdict } from './sv/verdict.ts';
import { work } from './sv/work.ts';

/** Every sentence in Swedish. */
export const sv: Wording = {
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
