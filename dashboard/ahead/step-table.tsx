import type { PlanAhead, SpreadMoment } from '../../daemon/contract/plan-ahead.ts';
import { useShed } from '../shed-context.ts';
import { BatchName } from './timeline.tsx';

interface StepTableProps {
  plan: PlanAhead;
  placeName: (id: string) => string;
}

/** The plan as a table, for those who cannot see the strips, and for paper. */
export function StepTable({ plan, placeName }: StepTableProps) {
  const { calendar } = useShed();
  const day = (moment: SpreadMoment['likely']) =>
    moment === null ? '–' : calendar.date(Date.parse(moment));
  return (
    <section class="panel" aria-labelledby="steps-title">
      <h2 id="steps-title">Job by job</h2>
      <table class="figures step-table">
        <thead>
          <tr>
            <th scope="col">Job</th>
            <th scope="col" class="wide-only">
              Where
            </th>
            <th scope="col">Likely</th>
            <th scope="col">Early</th>
            <th scope="col">Late</th>
          </tr>
        </thead>
        {plan.batches
          .filter((batch) => batch.steps.length > 0)
          .map((batch) => (
            <tbody key={`${batch.batchId} ${batch.lot}`}>
              <tr class="step-batch">
                <th scope="rowgroup" colSpan={5}>
                  <BatchName batch={batch} />
                </th>
              </tr>
              {batch.steps.map((step) => (
                <tr key={`${step.kind} ${step.coat}`}>
                  <th scope="row">{step.kind === 'mount' ? 'Put up' : step.name}</th>
                  <td class="wide-only">{placeName(step.placeId)}</td>
                  <td>{day(step.begins.likely)}</td>
                  <td>{day(step.begins.early)}</td>
                  <td>{day(step.begins.late)}</td>
                </tr>
              ))}
            </tbody>
          ))}
      </table>
    </section>
  );
}
