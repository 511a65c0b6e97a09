import type { Phrases } from './phrase.ts';
import type { FaultSentences } from './subject/fault.ts';
import type { NoticeSentences } from './subject/notice.ts';
import type { SiteSentences } from './subject/site.ts';
import type { TextSentences } from './subject/text.ts';
import type { VerdictSentences } from './subject/verdict.ts';
import type { WorkSentences } from './subject/work.ts';

/**
 * What a wall says: why a board is held, what wants attention and what is amiss, with the sentences
 * within those. So little is fetched before a wall is drawn.
 */
export type WallWording = Phrases<
  FaultSentences &
    NoticeSentences &
    SiteSentences &
    TextSentences &
    VerdictSentences &
    WorkSentences
>;
