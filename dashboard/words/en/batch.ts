import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

const boards = (count: number) => plural('en', count, { one: '# board', other: '# boards' });

/** One batch: its verdict, its jobs, its coats and all that was recorded. */
export const batch = {
  cannotShow: 'This batch cannot be shown',
  /** Heading for those who hear the page. */
  verdict: 'Verdict',
  stepByStep: 'Coat it step by step',
  printCard: 'Print the card for the rack',
  report: 'The report of this batch, to print or to keep',
  facts: {
    at: (place: string) => `at ${place}`,
    boards: (count: number, species: string) => `${boards(count)} of ${species}`,
    closed: 'closed',
    recomputing: 'late readings are being worked in',
  },
  hero: {
    notSure: 'Not sure any more',
    /** The word on the board with its job: “Wait to stack”. */
    spoken: (sign: string, job: string) => `${sign} ${job}`,
    /** “Coat 2 of 3, second coat: tack-free.” */
    coat: (number: string, all: string, coat: string, stage: string) =>
      `Coat ${number} of ${all}, ${coat}: ${stage}.`,
    faces: (faces: string) => `On ${faces}.`,
    lastBoard: (moment: Node) => ['Last board: ', moment, '.'],
    sum: (degreeHours: string, hours: string, at: string) =>
      `${degreeHours}, as much as ${hours} at ${at}.`,
    gathered: (degreeHours: string, needed: string) =>
      `${degreeHours} gathered; recoating likely needs ${needed}.`,
  },
  jobs: {
    title: 'What the boards may do',
    odds: (odds: string) => `Chance: ${odds}`,
    how: 'How to feel for it',
    exact: 'Exact times',
    oddsColumn: 'Odds',
    by: 'By',
    needs: 'Needs',
    oneInTen: '1 in 10',
    oneInTwo: '1 in 2',
    nineInTen: '9 in 10',
    unknown: 'unknown or past',
    footnote:
      'Odds speak for the slowest tenth of the boards. Until touch tests have taught better, what a job needs is a starting assumption.',
  },
  helps: 'What would help',
  air: {
    title: (place: string) => `The air at ${place}`,
    /** `word` is the word on the air, written boldly. */
    now: (temperature: string, humidity: string, dewPoint: string, word: Node) => [
      `${temperature}, ${humidity}, dew point ${dewPoint}. Air: `,
      word,
      '.',
    ],
    apart: (difference: string) =>
      `The sensors here are ${difference} apart; the coldest one counts.`,
    apartInHumidity: (difference: string) =>
      `The sensors here are ${difference} apart in humidity; the dampest one counts for dew.`,
  },
  coats: {
    title: 'Coats',
    name: (number: string, all: string, coat: string) => `${number} of ${all}: ${coat}`,
    used: (volume: string) => `${volume} used`,
    tin: (tin: string) => `tin ${tin}`,
    lastBoard: 'Last board',
    stage: 'Stage',
    sum: 'Sum',
    lowToHigh: 'Low to high',
    range: (low: string, high: string) => `${low} to ${high}`,
    hoursAt: (temperature: string) => `At ${temperature}`,
    arrhenius: 'By Arrhenius',
    measured: 'Measured',
    gaps: 'Without readings',
    needs: 'Recoat likely needs',
    model: 'Model',
    models: {
      'nurse-saul': (datum: string, gap: string) =>
        `temperature sum, datum ${datum}, gaps over ${gap} not counted`,
      arrhenius: (gap: string) => `Arrhenius, gaps over ${gap} not counted`,
    },
    byMistake: 'Recorded by mistake',
    byMistakeHow: 'Recorded by mistake? It is kept, marked as taken back.',
    leave: 'Leave it',
  },
  log: {
    title: 'What was recorded',
    nothing: 'Nothing yet. A touch test teaches more than any table.',
    moved: (place: string) => `Moved to ${place}`,
    remark: (remark: string, text: string) => `${remark}: ${text}`,
    meter: (quantity: string, figures: string) => `${quantity}: ${figures}`,
    /** `job` as in “ready to stack”, `felt` as in “Lifts clean”. */
    passed: (job: string, sum: string, on: string, felt: string) =>
      `Ready ${job} at ${sum}, felt on ${on}: ${felt}`,
    failed: (job: string, sum: string, on: string, felt: string) =>
      `Not yet ready ${job} at ${sum}, felt on ${on}: ${felt}`,
    on: { board: 'a board', offcut: 'the offcut' },
  },
};
