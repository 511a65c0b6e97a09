import type { Gate, VerdictWord } from '../contract/gate.ts';
import { gateNeeds } from './gate-need.ts';
import { clockWords, localTime } from './local-time.ts';
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
    because: string | null;
  }[];
  /** Notices that are open, and what is amiss with the computer. */
  wrong: readonly string[];
  brushing: readonly {
    placeName: string;
    words: string;
    stopBy: number | null;
    stopBecause: string;
    against: readonly string[];
  }[];
}

/**
 * The morning in words: what to feel, what is ready, what waits, what is wrong, and whether it is
 * weather to brush. No line is left out because it is good news.
 *
 * @param timeZone - IANA name
 */
export function morningDigest(view: MorningView, now: number, timeZone: string): MessageWords {
  const toFeel = view.batches.filter(({ verdict }) => verdict === 'test');
  const ready = view.batches.filter(({ verdict }) => verdict === 'ready');
  const title = [
    `${toFeel.length} to feel`,
    `${ready.length} ready`,
    view.wrong.length === 0 ? 'nothing open' : `${view.wrong.length} open`,
  ].join(', ');
  const sections = [
    section(
      'Racks and walls',
      view.batches.map((batch) => batchLine(batch, now, timeZone)),
    ),
    section('Feel today', toFeel.flatMap(testLine)),
    section('What is wrong', view.wrong),
    section(
      'To brush',
      view.brushing.map((place) => brushLine(place, now, timeZone)),
    ),
  ];
  return {
    title: `Morning of ${localTime(now, timeZone).day}: ${title}`,
    text: sections.join('\n\n'),
  };
}

const section = (head: string, lines: readonly string[]) =>
  [head, ...(lines.length === 0 ? ['- nothing'] : lines.map((line) => `- ${line}`))].join('\n');

type MorningBatch = MorningView['batches'][number];

function batchLine(batch: MorningBatch, now: number, timeZone: string): string {
  const { name, placeName, coatName, job, verdict, likelyAt, because } = batch;
  const head = `${name} at ${placeName}${coatName === null ? '' : `, ${coatName.toLowerCase()}`}`;
  if (job === null || verdict === null) return `${head}: waits for nothing.`;
  const { verb } = gateNeeds[job];
  if (verdict === 'ready') return `${head}: ready for ${verb}.`;
  if (verdict === 'test') return `${head}: worth a touch test for ${verb}.`;
  if (verdict === 'hold')
    return `${head}: cured enough for ${verb}, but held. ${because ?? ''}`.trim();
  const when = likelyAt === null ? 'nobody can say yet when' : dayWords(likelyAt, now, timeZone);
  return `${head}: ${verb} ${likelyAt === null ? '' : 'likely '}${when}.`;
}

const testLine = ({ name, job }: MorningBatch): string[] =>
  job === null ? [] : [`${name}: ${gateNeeds[job].test}`];

function brushLine(
  { placeName, words, stopBy, stopBecause, against }: MorningView['brushing'][number],
  now: number,
  timeZone: string,
): string {
  const stop = stopBy === null ? '' : ` Stop by ${dayWords(stopBy, now, timeZone)}. ${stopBecause}`;
  return [`${placeName}: ${words}`, ...against].join(' ') + stop;
}

function dayWords(at: number, now: number, timeZone: string): string {
  const { day } = localTime(at, timeZone);
  const clock = clockWords(at, timeZone);
  return day === localTime(now, timeZone).day ? clock : `${day} ${clock}`;
}
