import { useCallback } from 'preact/hooks';
import type { Season } from '../../daemon/contract/report.ts';
import { figure } from '../format/figures.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { jobs, jobsInOrder } from '../words/job-words.ts';

/** Days to each job by month and place, boards to the litre, and the model against what was felt. */
export function SeasonPage() {
  const { api } = useShed();
  const { replied } = useReply(useCallback(() => api.call('season', { query: {} }), [api]));
  if (replied.kind === 'loading') return <main class="page" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>The seasons</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const season = replied.reply;
  return (
    <main class="page season">
      <h1>The seasons</h1>
      <p class="lead">
        What became of the coats so far: how long they took, by month and place, and how well that
        was foreseen.
      </p>
      {season.rows.length === 0 ? (
        <p class="quiet">No coat was recorded yet.</p>
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
  return (
    <section class="panel" aria-labelledby="days-title">
      <h2 id="days-title">Days from the last board</h2>
      <table class="figures folding-table">
        <thead>
          <tr>
            <th scope="col">Month, place</th>
            <th scope="col">Coats</th>
            {jobsInOrder.map((gate) => (
              <th scope="col" key={gate}>
                {jobs[gate].noun}
              </th>
            ))}
            <th scope="col">Litres</th>
            <th scope="col">Boards per litre</th>
            <th scope="col">m² per litre</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={`${row.month} ${row.placeId}`}>
              <th scope="row">
                {row.month}, {row.placeName}
              </th>
              <td data-label="Coats:">{row.coats}</td>
              {jobsInOrder.map((gate) => (
                <td key={gate} data-label={`${jobs[gate].noun}:`}>
                  {daysWords(row.days[gate])}
                </td>
              ))}
              <td data-label="Litres:">{optional(row.usedL)}</td>
              <td data-label="Boards per litre:">{optional(row.boardsPerLitre)}</td>
              <td data-label="m² per litre:">{optional(row.m2PerLitre)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="footnote">
        The median, with the shortest and the longest: when the job became as likely as not to be
        possible, by the model as it has learned by now. A dash: no coat got that far before the
        next one went on.
      </p>
    </section>
  );
}

function daysWords(days: Season['rows'][number]['days']['turn'] | undefined): string {
  if (!days) return '–';
  const range = days.coats > 1 ? ` (${days.shortest.toFixed(1)}–${days.longest.toFixed(1)})` : '';
  return `${days.median.toFixed(1)}${range}`;
}

const optional = (value: number | null) =>
  value === null ? '–' : figure(Number(value.toPrecision(3)));

function ModelTable({ against }: { against: Season['modelAgainstTests'] }) {
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  return (
    <section class="panel" aria-labelledby="model-title">
      <h2 id="model-title">The model against your thumb</h2>
      {against.tests === 0 ? (
        <p class="quiet">No touch test yet: there is nothing to set it against.</p>
      ) : (
        <>
          <table class="figures">
            <thead>
              <tr>
                <th scope="col">The model gave</th>
                <th scope="col">on average</th>
                <th scope="col">Tests</th>
                <th scope="col">of them passed</th>
              </tr>
            </thead>
            <tbody>
              {against.bins.map((bin) => (
                <tr key={bin.from}>
                  <th scope="row">
                    {percent(bin.from)} to {percent(bin.to)}
                  </th>
                  <td>{percent(bin.meanProbability)}</td>
                  <td>{bin.tests}</td>
                  <td>{percent(bin.passed / bin.tests)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p class="footnote">
            A good model passes as often as it said. Each test is set against what was believed
            without it. Mean squared error {against.brier?.toFixed(3)}; a coin toss has 0.250.
          </p>
        </>
      )}
    </section>
  );
}
