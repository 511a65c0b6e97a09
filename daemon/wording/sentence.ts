import type { Sentence, SentenceValues, Told } from '../contract/sentence.ts';
import type { Inner, Phrase, Phrases } from './phrase.ts';
import type { Speaker } from './speaker.ts';
import type { AccessSentences } from './subject/access.ts';
import type { AheadSentences } from './subject/ahead.ts';
import type { AirSentences } from './subject/air.ts';
import type { CalendarSentences } from './subject/calendar.ts';
import type { CalibrationSentences } from './subject/calibration.ts';
import type { DeliverySentences } from './subject/delivery.ts';
import type { DetailSentences } from './subject/detail.ts';
import type { DigestSentences } from './subject/digest.ts';
import type { FaultSentences } from './subject/fault.ts';
import type { FieldSentences } from './subject/field.ts';
import type { FitSentences } from './subject/fit.ts';
import type { HelpSentences } from './subject/help.ts';
import type { LockUpSentences } from './subject/lock-up.ts';
import type { NameSentences } from './subject/name.ts';
import type { NoticeSentences } from './subject/notice.ts';
import type { PaintSentences } from './subject/paint.ts';
import type { PayloadSentences } from './subject/payload.ts';
import type { ProblemSentences } from './subject/problem.ts';
import type { RemarkSentences } from './subject/remark.ts';
import type { SettingSentences } from './subject/setting.ts';
import type { SiteSentences } from './subject/site.ts';
import type { SolventSentences } from './subject/solvent.ts';
import type { TextSentences } from './subject/text.ts';
import type { TimberSentences } from './subject/timber.ts';
import type { TopicRuleSentences } from './subject/topic-rule.ts';
import type { VerdictSentences } from './subject/verdict.ts';
import type { WorkSentences } from './subject/work.ts';

/**
 * Every sentence that the daemon says, and what it tells. A code that has several sentences is
 * written with its variant, as `code/variant`; in replies the variant is the value of that name.
 */
export interface SentenceTable
  extends AccessSentences,
    AheadSentences,
    AirSentences,
    CalendarSentences,
    CalibrationSentences,
    DetailSentences,
    DigestSentences,
    FaultSentences,
    FieldSentences,
    FitSentences,
    HelpSentences,
    LockUpSentences,
    NameSentences,
    NoticeSentences,
    PaintSentences,
    ProblemSentences,
    RemarkSentences,
    SettingSentences,
    SiteSentences,
    SolventSentences,
    TextSentences,
    TimberSentences,
    VerdictSentences,
    DeliverySentences,
    PayloadSentences,
    TopicRuleSentences,
    WorkSentences {}

export type SentenceCode = keyof SentenceTable;

/** All sentences in one language. */
export type Wording = Phrases<SentenceTable>;

/** The sentences of some subjects: what is missing is said by its English text. */
export type SomeWording = Partial<Wording>;

/** A figure with no more digits than anyone is told. */
function rounded(value: unknown): unknown {
  if (typeof value !== 'number' || Number.isInteger(value)) return value;
  // What is no number cannot be sent; its sentence is then said by its code alone.
  return Number.isFinite(value) ? Number(value.toPrecision(7)) : null;
}

/** A sentence as code and values, to be said where its language is known. */
export function told<Code extends SentenceCode>(code: Code, values: SentenceTable[Code]): Told {
  const [plain = code, variant] = code.split('/');
  const kept: Record<string, unknown> = variant === undefined ? {} : { variant };
  for (const [name, value] of Object.entries(values)) kept[name] = rounded(value);
  return { code: plain, values: kept as SentenceValues };
}

/** A sentence as it stands within another one. */
export function inner({ code, values, text }: Sentence): Inner {
  if (values === undefined) return { code: 'as-written', values: { text } };
  return { code, values: values as Inner['values'] };
}

const keyOf = (code: string, values: SentenceValues): string =>
  typeof values.variant === 'string' ? `${code}/${values.variant}` : code;

/**
 * Says a sentence in the language of a wording. One that is not known there, as after an upgrade of
 * the other side, is said by its text.
 *
 * @param sentence - `text` may be left out where no reply is at hand; the code stands in for it
 */
export function say(
  wording: SomeWording,
  sentence: Pick<Sentence, 'code' | 'values'> & { text?: string },
  speak: Speaker,
): string {
  const { code, values, text = code } = sentence;
  if (values === undefined) return text;
  const phrase = Object.hasOwn(wording, keyOf(code, values))
    ? (wording[keyOf(code, values) as SentenceCode] as Phrase<SentenceValues>)
    : undefined;
  if (phrase === undefined) return text;
  try {
    return phrase(values, speak, (inner: Inner) => say(wording, inner, speak));
  } catch {
    // Values of another version than this wording’s.
    return text;
  }
}
