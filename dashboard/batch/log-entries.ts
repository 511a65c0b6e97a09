import type { Batch } from '../../daemon/contract/batch.ts';
import { degreeHoursFigure, figure } from '../format/figures.ts';
import { jobs } from '../words/job-words.ts';
import { quantityWords, remarkWords } from '../words/thing-words.ts';

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
 */
export function logEntries(
  batch: Pick<Batch, 'moves' | 'tests' | 'remarks' | 'handReadings'>,
  placeName: (id: string) => string,
): LogEntry[] {
  const entries: LogEntry[] = [
    ...batch.moves.flatMap((move) =>
      move.at === null
        ? []
        : [{ id: move.id, at: Date.parse(move.at), what: `Moved to ${placeName(move.placeId)}` }],
    ),
    ...batch.tests.map((test) => ({
      id: test.id,
      at: Date.parse(test.at),
      what: testWords(test),
    })),
    ...batch.remarks.map((remark) => ({
      id: remark.id,
      at: Date.parse(remark.at),
      what:
        remark.text === null
          ? remarkWords[remark.kind]
          : remark.kind === 'other'
            ? remark.text
            : `${remarkWords[remark.kind]}: ${remark.text}`,
    })),
    ...batch.handReadings.map((reading) => {
      const { name, unit } = quantityWords[reading.quantity];
      const values = reading.values.map(figure).join(' · ');
      return { id: reading.id, at: Date.parse(reading.at), what: `${name}: ${values} ${unit}` };
    }),
  ];
  return entries.sort((a, b) => b.at - a.at);
}

function testWords(test: Batch['tests'][number]): string {
  const job = jobs[test.gate];
  const felt = test.passed ? job.passed : job.failed;
  const on = test.on === 'board' ? 'a board' : 'the offcut';
  const answer = test.passed ? 'Ready' : 'Not yet ready';
  return `${answer} ${job.infinitive} at ${degreeHoursFigure(test.degreeHours)}, felt on ${on}: ${felt.charAt(0).toLowerCase()}${felt.slice(1)}`;
}
