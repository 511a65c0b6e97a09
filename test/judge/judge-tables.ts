import { gates } from '../../daemon/contract/gate.ts';
import { plainTable } from '../bench/plain-table.ts';
import type { JudgedJob, JudgedShed } from './judge-shed.ts';
import { airTable, byTests, tally, threeDays } from './tally.ts';

const percent = (share: number) => (Number.isNaN(share) ? '–' : `${(100 * share).toFixed(1)} %`);
const hours = (value: number) => (Number.isNaN(value) ? '–' : `${value.toFixed(0)} h`);

function row(name: string, jobs: readonly JudgedJob[]): string[] {
  const { said, early, earlyByHours, earlyHoursShare, ...waits } = tally(jobs);
  return [
    ...[name, String(said), percent(early / said), hours(earlyByHours), percent(earlyHoursShare)],
    ...[hours(waits.waited), hours(waits.waited90), hours(waits.workWaited)],
  ];
}

const HEAD = [
  ...['', 'called ready', 'too early', 'by', 'of its hours', 'waited', '90 %'],
  'work waited',
];

function group(name: string, sheds: readonly JudgedShed[]): string[][] {
  const jobs = sheds.flatMap((shed) => shed.jobs);
  if (jobs.length === 0) return [];
  return [
    row(`${name}, ${sheds.length} sheds`, jobs),
    ...byTests(jobs).map(({ tests, jobs: some }) => row(`  ${tests} tests of the paint`, some)),
    row(
      '  the job it waits for',
      jobs.filter(({ isGoal }) => isGoal),
    ),
  ];
}

/** The judge's tables, as text. */
export function judgeTables(sheds: readonly JudgedShed[]): string {
  const jobs = sheds.flatMap((shed) => shed.jobs);
  const goals = jobs.filter(({ isGoal }) => isGoal);
  const rule = threeDays(goals);
  const where = (is: (shed: JudgedShed) => boolean) => sheds.filter(is);
  const verdicts = plainTable(HEAD, [
    ...group('all', sheds),
    ...group(
      'sound sensors, boards felt',
      where(({ hasFaults, tests }) => !hasFaults && tests),
    ),
    ...group(
      'failing sensors, boards felt',
      where(({ hasFaults, tests }) => hasFaults && tests),
    ),
    ...group(
      'sound sensors, nothing felt',
      where(({ hasFaults, tests }) => !hasFaults && !tests),
    ),
    ...group(
      'failing sensors, nothing felt',
      where(({ hasFaults, tests }) => hasFaults && !tests),
    ),
    ...gates.map((gate) =>
      row(
        `${gate}, all sheds`,
        jobs.filter((job) => job.gate === gate),
      ),
    ),
    [
      ...['“three days”, the job it waits for', String(rule.said), percent(rule.early / rule.said)],
      ...['', '', hours(rule.waited), hours(rule.waited90), ''],
    ],
  ]);
  const air = plainTable(
    ['the air is, place-hours', 'called poor', 'cannot tell', 'called good'],
    airTable(sheds).map(({ isSo, ...said }) => [
      isSo,
      ...[said.poor, said.cannotTell, said.good].map(String),
    ]),
  );
  return `${verdicts}\n\n${air}`;
}
