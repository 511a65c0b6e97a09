import { useCallback } from 'preact/hooks';
import type { Season } from '../../daemon/contract/report.ts';
import { jobsInOrder } from '../format/jobs-in-order.ts';
import { type Figures, MISSING } from '../format/reader-figures.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import type { Words } from '../words/words.ts';

/** Days to each job by month and place, boards to the litre, and the model against what was felt. */
export function SeasonPage() {
  const { api } = useShed();
  const said = useReader().words.season;
  const { replied } = useReply(useCallback(() => api.call('season', { query: {} }), [api]));
  if (replied.kind === 'loading') return <main class="page" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>{said.title}</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const season = replied.reply;
  return (
    <main class="page season">
      <h1>{said.title}</h1>
      <p class="lead">{said.lead}</p>
      {season.rows.length === 0 ? (
        <p class="quiet">{said.noCoat}</p>
      ) : (
        <>
          <DaysTable rows={season.rows} />
          <ModelTable against={season.modelAgainstTests} />
        </>
      )}
    </main>
  );
}

function DaysTable({ rows }: { rows: Season['rows'] }) {
  const { words, figures, calendar, units } = useReader();
  const { jobs } = words;
  const said = words.season.days;
  return (
    <section class="panel" aria-labelledby="days-title">
      <h2 id="days-title">{said.title}</h2>
      <table class="figures folding-table">
        <thead>
          <tr>
            <th scope="col">{said.monthAndPlace}</th>
            <th scope="col">{said.coats}</th>
            {jobsInOrder.map((gate) => (
              <th scope="col" key={gate}>
                {jobs[gate].noun}
              </th>
            ))}
            <th scope="col">{said.used[units]}</th>
            <th scope="col">{said.boardsEach[units]}</th>
            <th scope="col">{said.areaEach[units]}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={`${row.month} ${row.placeId}`}>
              <th scope="row">{said.inMonth(calendar.month(row.month), row.placeName)}</th>
              <td data-label={said.label(said.coats)}>{figures.number(row.coats)}</td>
              {jobsInOrder.map((gate) => (
                <td key={gate} data-label={said.label(jobs[gate].noun)}>
                  {daysLine(row.days[gate], said, figures)}
                </td>
              ))}
              <td data-label={said.label(said.used[units])}>
                {figures.roughly('litres', row.usedL)}
              </td>
              <td data-label={said.label(said.boardsEach[units])}>
                {figures.roughly('perLitre', row.boardsPerLitre)}
              </td>
              <td data-label={said.label(said.areaEach[units])}>
                {figures.roughly('spreadingM2PerL', row.m2PerLitre)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="footnote">{said.foot}</p>
    </section>
  );
}

function daysLine(
  days: Season['rows'][number]['days']['turn'] | undefined,
  { range }: Words['season']['days'],
  figures: Figures,
): string {
  if (!days) return MISSING;
  const tenths = (value: number) => figures.number(value, 1, 1);
  return days.coats > 1
    ? range(tenths(days.median), tenths(days.shortest), tenths(days.longest))
    : tenths(days.median);
}

/** The mean squared error of always giving one half. */
const coinToss = 0.25;

function ModelTable({ against }: { against: Season['modelAgainstTests'] }) {
  const { words, figures } = useReader();
  const said = words.season.model;
  return (
    <section class="panel" aria-labelledby="model-title">
      <h2 id="model-title">{said.title}</h2>
      {against.tests === 0 ? (
        <p class="quiet">{said.noTest}</p>
      ) : (
        <>
          <table class="figures">
            <thead>
              <tr>
                <th scope="col">{said.gave}</th>
                <th scope="col">{said.average}</th>
                <th scope="col">{said.tests}</th>
                <th scope="col">{said.passed}</th>
              </tr>
            </thead>
            <tbody>
              {against.bins.map((bin) => (
                <tr key={bin.from}>
                  <th scope="row">{said.fromTo(figures.share(bin.from), figures.share(bin.to))}</th>
                  <td>{figures.share(bin.meanProbability)}</td>
                  <td>{figures.number(bin.tests)}</td>
                  <td>{figures.share(bin.passed / bin.tests)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="footnote">
            {said.foot(
              against.brier === null ? MISSING : figures.number(against.brier, 3, 3),
              figures.number(coinToss, 3, 3),
            )}
          </p>
        </>
      )}
    </section>
  );
}
