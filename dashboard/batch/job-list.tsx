import type { Coat } from '../../daemon/contract/coat.ts';
import type { Gate, GateVerdict, Reason } from '../../daemon/contract/gate.ts';
import { jobsInOrder } from '../format/jobs-in-order.ts';
import { oddsLine } from '../format/odds.ts';
import { expectedAt } from '../format/time-left.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { SignMark } from '../wall/sign-mark.tsx';
import { isNews, sharedReasons } from './shared-reasons.ts';

/** The five jobs with their verdicts, why, and how to feel for them. */
export function JobList({ coat, waitedFor }: { coat: Coat; waitedFor: Gate | null }) {
  const { jobs } = useReader().words.batch;
  const shared = sharedReasons(jobsInOrder.map((gate) => coat.gates[gate]));
  return (
    <section class="jobs" aria-labelledby="jobs-title">
      <h2 id="jobs-title">{jobs.title}</h2>
      <ul class="job-list">
        {jobsInOrder.map((gate) => (
          <Job
            key={gate}
            gate={gate}
            verdict={coat.gates[gate]}
            next={gate === waitedFor}
            saidBelow={shared}
          />
        ))}
      </ul>
      {shared.map((reason) => (
        <p key={reason.code} class="job-shared">
          <Said sentence={reason} />
        </p>
      ))}
      <p class="footnote">{jobs.footnote}</p>
    </section>
  );
}

interface JobProps {
  gate: Gate;
  verdict: GateVerdict;
  next: boolean;
  /** Reasons that other jobs have too. */
  saidBelow: readonly Reason[];
}

function Job({ gate, verdict, next, saidBelow }: JobProps) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  const { jobs } = words.batch;
  const expected = expectedAt(verdict, live.now.value, calendar);
  const doubt = words.times.doubt(expected);
  const job = words.jobs[gate];
  return (
    <li class={`job sign-${verdict.verdict}${next ? ' job-next' : ''}`}>
      <h3 class="job-name">{job.noun}</h3>
      <p class="job-verdict">
        <SignMark sign={verdict.verdict} />
        <strong>{words.signs[verdict.verdict].spoken}</strong>
      </p>
      <div class="job-when">
        <p class="job-likely">{words.times.likely(expected)}</p>
        {doubt !== null && <p>{doubt}</p>}
        <ExactTimes verdict={verdict} />
      </div>
      <div class="job-why">
        <p class="job-odds">{jobs.odds(oddsLine(verdict.probability, words.times))}</p>
        {verdict.reasons
          .filter((reason) => isNews(reason) && !saidBelow.some(({ text }) => text === reason.text))
          .map((reason) => (
            <p key={reason.code}>
              <Said sentence={reason} />
            </p>
          ))}
        <details class="more">
          <summary>{jobs.how}</summary>
          <p>{job.test}</p>
        </details>
      </div>
    </li>
  );
}

function ExactTimes({ verdict }: { verdict: GateVerdict }) {
  const { words, calendar, figures } = useReader();
  const { jobs } = words.batch;
  const { early, likely, late, requiredDegreeHours: need } = verdict;
  const times = [
    { name: jobs.oneInTen, at: early, sum: need.early },
    { name: jobs.oneInTwo, at: likely, sum: need.likely },
    { name: jobs.nineInTen, at: late, sum: need.late },
  ];
  return (
    <details class="more">
      <summary>{jobs.exact}</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{jobs.oddsColumn}</th>
            <th scope="col">{jobs.by}</th>
            <th scope="col">{jobs.needs}</th>
          </tr>
        </thead>
        <tbody>
          {times.map(({ name, at, sum }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{at === null ? jobs.unknown : calendar.exact(Date.parse(at))}</td>
              <td>{figures.degreeHours(sum)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
