import type { Gate, VerdictWord } from '../contract/gate.ts';
import type { Sentence, Told } from '../contract/sentence.ts';
import { builtInName } from '../wording/built-in-name.ts';
import { inner, told } from '../wording/sentence.ts';
import type { Voice } from '../wording/voice.ts';
import { localTime } from './local-time.ts';
import type { MessageWords } from './message-words.ts';

/** What the morning looks like, as plain data. */
export interface MorningView {
  batches: readonly {
    name: string;
    placeName: string;
    coatName: string | null;
    job: Gate | null;
    verdict: VerdictWord | null;
    likelyAt: number | null;
    /** First reason of a verdict that holds. */
    because: Sentence | null;
  }[];
  /** Notices that are open, and what is amiss with the computer. */
  wrong: readonly Sentence[];
  brushing: readonly {
    placeName: string;
    words: Sentence;
    stopBy: number | null;
    stopBecause: Sentence;
    against: readonly Sentence[];
  }[];
}

/**
 * The morning in words: what to feel, what is ready, what waits, what is wrong, and whether it is
 * weather to brush. No line is left out because it is good news.
 *
 * @param timeZone - IANA name
 * @param voice - speaks the site’s language
 */
export function morningDigest(
  view: MorningView,
  now: number,
  timeZone: string,
  voice: Voice,
): MessageWords {
  const isToday = (at: number) => localTime(at, timeZone).day === localTime(now, timeZone).day;
  const toFeel = view.batches.filter(({ verdict }) => verdict === 'test');
  const counts = {
    toFeel: toFeel.length,
    ready: view.batches.filter(({ verdict }) => verdict === 'ready').length,
    open: view.wrong.length,
  };
  const section = (head: 'racks' | 'feel' | 'wrong' | 'brush', lines: readonly string[]) => {
    const shown = lines.length === 0 ? [voice(told('digest-nothing', {}))] : lines;
    return [voice(told(`digest-head/${head}`, {})), ...shown.map((line) => `- ${line}`)].join('\n');
  };
  const sections = [
    section(
      'racks',
      view.batches.map((batch) => voice(rackLine(batch, isToday))),
    ),
    section(
      'feel',
      toFeel.flatMap(({ name, job }) =>
        job === null ? [] : [voice(told('digest-feel', { batchName: name, gate: job }))],
      ),
    ),
    section('wrong', view.wrong.map(voice)),
    section(
      'brush',
      view.brushing.map((place) => voice(brushLine(place, isToday))),
    ),
  ];
  return {
    title: voice(told('digest-title', { at: now, ...counts })),
    text: sections.join('\n\n'),
  };
}

function rackLine(batch: MorningView['batches'][number], isToday: (at: number) => boolean): Told {
  const { name, placeName, coatName, job: gate, verdict, likelyAt, because } = batch;
  const coat = coatName === null ? null : inner(builtInName(coatName));
  const rack = { batchName: name, placeName, coatName: coat };
  if (gate === null || verdict === null) return told('digest-rack/done', rack);
  if (verdict === 'ready') return told('digest-rack/ready', { ...rack, gate });
  if (verdict === 'test') return told('digest-rack/test', { ...rack, gate });
  if (verdict === 'hold') {
    const why = because === null ? null : inner(because);
    return told('digest-rack/hold', { ...rack, gate, because: why });
  }
  if (likelyAt === null) return told('digest-rack/unknown', { ...rack, gate });
  const when = { at: likelyAt, today: isToday(likelyAt) };
  return told('digest-rack/likely', { ...rack, gate, ...when });
}

function brushLine(place: MorningView['brushing'][number], isToday: (at: number) => boolean): Told {
  const { placeName, words, stopBy, stopBecause, against } = place;
  const weather = { placeName, sentences: [words, ...against].map(inner) };
  if (stopBy === null) return told('digest-brush', weather);
  const stop = { stopAt: stopBy, today: isToday(stopBy), because: inner(stopBecause) };
  return told('digest-brush/stop', { ...weather, ...stop });
}
