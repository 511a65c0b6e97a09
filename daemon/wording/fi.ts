import { access } from './fi/access.ts';
import { ahead } from './fi/ahead.ts';
import { air } from './fi/air.ts';
import { calendar } from './fi/calendar.ts';
import { calibration } from './fi/calibration.ts';
import { delivery } from './fi/delivery.ts';
import { detail } from './fi/detail.ts';
import { digest } from './fi/digest.ts';
import { fault } from './fi/fault.ts';
import { field } from './fi/field.ts';
import { fit } from './fi/fit.ts';
import { help } from './fi/help.ts';
import { lockUp } from './fi/lock-up.ts';
import { name } from './fi/name.ts';
import { notice } from './fi/notice.ts';
import { paint } from './fi/paint.ts';
import { payload } from './fi/payload.ts';
import { problem } from './fi/problem.ts';
import { remark } from './fi/remark.ts';
import { setting } from './fi/setting.ts';
import { site } from './fi/site.ts';
import { solvent } from './fi/solvent.ts';
import { text } from './fi/text.ts';
import { timber } from './fi/timber.ts';
import { topicRule } from './fi/topic-rule.ts';
import { verdict } from './fi/verdict.ts';
import { work } from './fi/work.ts';
import type { Wording } from './sentence.ts';

/** Every sentence in Finnish. */
export const fi: Wording = {
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
