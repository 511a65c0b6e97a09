import { access } from './de/access.ts';
import { ahead } from './de/ahead.ts';
import { air } from './de/air.ts';
import { calendar } from './de/calendar.ts';
import { calibration } from './de/calibration.ts';
import { delivery } from './de/delivery.ts';
import { detail } from './de/detail.ts';
import { digest } from './de/digest.ts';
import { fault } from './de/fault.ts';
import { field } from './de/field.ts';
import { fit } from './de/fit.ts';
import { help } from './de/help.ts';
import { lockUp } from './de/lock-up.ts';
import { name } from './de/name.ts';
import { notice } from './de/notice.ts';
import { paint } from './de/paint.ts';
import { payload } from './de/payload.ts';
import { problem } from './de/problem.ts';
import { remark } from './de/remark.ts';
import { setting } from './de/setting.ts';
import { site } from './de/site.ts';
import { solvent } from './de/solvent.ts';
import { text } from './de/text.ts';
import { timber } from './de/timber.ts';
import { topicRule } from './de/topic-rule.ts';
import { verdict } from './de/verdict.ts';
import { work } from './de/work.ts';
import type { Wording } from './sentence.ts';

/** Every sentence in German. */
export const de: Wording = {
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
