import type { Coat } from '../../daemon/contract/coat.ts';
import type { Gate, GateVerdict, Reason } from '../../daemon/contract/gate.ts';
import { degreeHoursFigure, oddsWords } from '../format/figures.ts';
import { timeLeft } from '../format/time-left.ts';
import { useShed } from '../shed-context.ts';
import { SignMark } from '../wall/sign-mark.tsx';
import { jobs, jobsInOrder } from '../words/job-words.ts';
import { signs } from '../words/verdict-words.ts';

/** The five jobs with their verdicts, why, and how to feel for them. */
export function JobList({ coat, waitedFor }: { coat: Coat; waitedFor: Gate | null }) {
  return (
    <section class="jobs" aria-labelledby="jobs-title">
      <h2 id="jobs-title">What the boards may do</h2>
      <ul class="job-list">
        {jobsInOrder.map((gate) => (
          <Job key={gate} gate={gate} verdict={coat.gates[gate]} next={gate === waitedFor} />
        ))}
      </ul>
      <p class="footnote">
        Odds speak for the slowest tenth of the boards. Until touch tests have taught better, what a
        job needs is a starting assumption.
      </p>
    </section>
  );
}

function Job({ gate, verdict, next }: { gate: Gate; verdict: GateVerdict; next: boolean }) {
  const { live, calendar } = useShed();
  const left = timeLeft(verdict, live.now.value, calendar);
  const words = jobs[gate];
  return (
    <li class={`job sign-${verdict.verdict}${next ? ' job-next' : ''}`}>
      <h3 class="job-name">{words.noun}</h3>
      <p class="job-verdict">
        <SignMark sign={verdict.verdict} />
        <strong>{signs[verdict.verdict].spoken}</strong>
      </p>
      <div class="job-when">
        <p class="job-likely">{left.likely}</p>
        {left.window !== null && <p>{left.window}</p>}
        <ExactTimes verdict={verdict} />
      </div>
      <div class="job-why">
        <p class="job-odds">Chance: {oddsWords(verdict.probability)}</p>
        {verdict.reasons.filter(isNews).map((reason) => (
          <p key={reason.code}>{reason.text}</p>
        ))}
        <details class="more">
          <summary>How to feel for it</summary>
          <p>{words.test}</p>
        </details>
      </div>
    </li>
  );
}

/** How to test stands in the fold below, and the footnote says what is assumed. */
function isNews(reason: Reason): boolean {
  return reason.code !== 'how-to-test' && reason.code !== 'starting-assumption';
}

function ExactTimes({ verdict }: { verdict: GateVerdict }) {
  const { calendar } = useShed();
  const { early, likely, late, requiredDegreeHours: need } = verdict;
  const times = [
    { name: '1 in 10', at: early, sum: need.early },
    { name: '1 in 2', at: likely, sum: need.likely },
    { name: '9 in 10', at: late, sum: need.late },
  ];
  return (
    <details class="more">
      <summary>Exact times</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Odds</th>
            <th scope="col">By</th>
            <th scope="col">Needs</th>
          </tr>
        </thead>
        <tbody>
          {times.map(({ name, at, sum }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{at === null ? 'unknown or past' : calendar.exact(Date.parse(at))}</td>
              <td>{degreeHoursFigure(sum)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
