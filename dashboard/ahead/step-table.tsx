import type { PlanAhead, SpreadMoment } from '../../daemon/contract/plan-ahead.ts';
import { MISSING } from '../format/reader-figures.ts';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { PlannedDay } from './planned-day.tsx';
import { BatchName } from './timeline.tsx';

interface StepTableProps {
  plan: PlanAhead;
  placeName: (id: string) => string;
}

/** The plan as a table, for those who cannot see the strips, and for paper. */
export function StepTable({ plan, placeName }: StepTableProps) {
  const { words } = useReader();
  const ownName = useOwnName();
  const { table } = words.ahead;
  const day = (moment: SpreadMoment['likely']) =>
    moment === null ? MISSING : <PlannedDay moment={moment} />;
  return (
    <section class="panel" aria-labelledby="steps-title">
      <h2 id="steps-title">{table.title}</h2>
      <table class="figures stacked step-table">
        <thead>
          <tr>
            <th scope="col">{table.job}</th>
            <th scope="col" class="wide-only">
              {table.where}
            </th>
            <th scope="col">{table.likely}</th>
            <th scope="col">{table.early}</th>
            <th scope="col">{table.late}</th>
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
                  <th scope="row">
                    {step.kind === 'mount' ? words.ahead.putUp : ownName(step.name)}
                  </th>
                  <td class="wide-only">{placeName(step.placeId)}</td>
                  <td data-label={table.likely}>{day(step.begins.likely)}</td>
                  <td data-label={table.early}>{day(step.begins.early)}</td>
                  <td data-label={table.late}>{day(step.begins.late)}</td>
                </tr>
              ))}
            </tbody>
          ))}
      </table>
    </section>
  );
}
