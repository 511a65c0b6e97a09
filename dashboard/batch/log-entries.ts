import type { Batch } from '../../daemon/contract/batch.ts';
import { withinSentence } from '../format/lists.ts';
import { reading as readingLine } from '../format/reading.ts';
import type { Reader } from '../reader.ts';

export interface LogEntry {
  readonly id: string;
  /** UTC epoch ms. */
  readonly at: number;
  readonly what: string;
}

/**
 * Everything that was recorded about a batch but its coats, the newest first.
 *
 * @param placeName - the name of a place by its id
 * @param reader - in whose words and units
 */
export function logEntries(
  batch: Pick<Batch, 'moves' | 'tests' | 'remarks' | 'handReadings'>,
  placeName: (id: string) => string,
  reader: Pick<Reader, 'words' | 'figures' | 'units' | 'locale'>,
): LogEntry[] {
  const { words } = reader;
  const { log } = words.batch;
  const { remarks, quantities } = words.things;
  const entries: LogEntry[] = [
    ...batch.moves.flatMap((move) =>
      move.at === null
        ? []
        : [{ id: move.id, at: Date.parse(move.at), what: log.moved(placeName(move.placeId)) }],
    ),
    ...batch.tests.map((test) => ({
      id: test.id,
      at: Date.parse(test.at),
      what: testLine(test, reader),
    })),
    ...batch.remarks.map(({ id, at, kind, text }) => ({
      id,
      at: Date.parse(at),
      what:
        text === null ? remarks[kind] : kind === 'other' ? text : log.remark(remarks[kind], text),
    })),
    ...batch.handReadings.map(({ id, at, quantity, values }) => ({
      id,
      at: Date.parse(at),
      what: log.meter(
        quantities[quantity],
        values.map((value) => readingLine(quantity, value, reader)).join(' · '),
      ),
    })),
  ];
  return entries.sort((a, b) => b.at - a.at);
}

function testLine(
  test: Batch['tests'][number],
  { words, figures, locale }: Pick<Reader, 'words' | 'figures' | 'locale'>,
): string {
  const { log } = words.batch;
  const job = words.jobs[test.gate];
  const felt = withinSentence(test.passed ? job.passed : job.failed, locale);
  const line = test.passed ? log.passed : log.failed;
  return line(job.infinitive, figures.degreeHours(test.degreeHours), log.on[test.on], felt);
}
