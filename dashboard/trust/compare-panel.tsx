import { useCallback, useState } from 'preact/hooks';
import type { Comparison } from '../../daemon/contract/comparison.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { ComparisonTable } from './comparison-table.tsx';

const hourMs = 3_600_000;
/** A night, as a start for the time to compare. */
const nightHours = 10;

interface Asked {
  sensors: string[];
  from: string;
  to: string;
}

/** All nodes in one closed box over night: which is the odd one out, and its offset with one press. */
export function ComparePanel() {
  const { api, live } = useShed();
  const { replied } = useReply(useCallback(() => api.call('listSensors', {}), [api]));
  const comparing = useSending();
  const accepting = useSending();
  const [asked, setAsked] = useState<Asked | null>(null);
  const [comparison, setComparison] = useState<Comparison | null>(null);
  const [taken, setTaken] = useState<number | null>(null);
  const sensors =
    replied.kind === 'there' ? replied.reply.map(({ id, name }) => ({ id, name })) : [];
  const names = new Map(sensors.map(({ id, name }) => [id, name ?? id]));
  const offered = [...new Set((comparison?.offers ?? []).map(({ sensor }) => sensor))];
  const now = live.now.value;

  async function compare(form: FormData): Promise<void> {
    const chosen = form.getAll('sensor').map(String);
    const question = {
      sensors: chosen,
      from: fromLocalField(textOf(form, 'from')),
      to: fromLocalField(textOf(form, 'to')),
    };
    setTaken(null);
    const found = await comparing.send(() =>
      api.call('compareSensors', { query: { ...question, sensors: chosen.join(',') } }),
    );
    setAsked(question);
    setComparison(found);
  }

  async function accept(form: FormData): Promise<void> {
    if (asked === null) return;
    const wanted = new Set(form.getAll('offered'));
    const leaveOut = offered.filter((id) => !wanted.has(id));
    const done = await accepting.send(() =>
      api.call('acceptComparison', { body: { ...asked, leaveOut } }),
    );
    if (done === null) return;
    setTaken(done.length);
    await live.refresh();
  }

  if (sensors.length < 2) {
    return <p class="quiet">With two sensors or more they can be compared in one closed box.</p>;
  }
  return (
    <div class="compare">
      <p>
        Lay all sensors into one closed box, away from sun and heater, and leave it for a night.
        Then tick them and press compare.
      </p>
      <WriteFrame problem={comparing.problem} busy={comparing.busy} onSend={compare}>
        <fieldset class="choice compare-choice">
          <legend>Lay in the box</legend>
          {sensors.map(({ id, name }) => (
            <label key={id} class="compare-sensor">
              <input type="checkbox" name="sensor" value={id} defaultChecked />
              <span>{name ?? id}</span>
            </label>
          ))}
        </fieldset>
        <TextField
          label="Together from"
          name="from"
          kind="datetime-local"
          value={toLocalField(now - nightHours * hourMs)}
          pointer="/from"
          problem={comparing.problem}
        />
        <TextField
          label="Until"
          name="to"
          kind="datetime-local"
          value={toLocalField(now)}
          pointer="/to"
          problem={comparing.problem}
        />
        <button type="submit" class="button">
          Compare
        </button>
      </WriteFrame>
      {comparison !== null && (
        <div class="compare-found" role="status">
          <ComparisonTable comparison={comparison} names={names} />
          {comparison.offers.length > 0 && taken === null && (
            <WriteFrame problem={accepting.problem} busy={accepting.busy} onSend={accept}>
              <fieldset class="choice compare-choice">
                <legend>Whose offsets to take</legend>
                {offered.map((id) => (
                  <label key={id} class="compare-sensor">
                    <input type="checkbox" name="offered" value={id} defaultChecked />
                    <span>{names.get(id) ?? id}</span>
                  </label>
                ))}
              </fieldset>
              <button type="submit" class="button">
                Take these offsets
              </button>
            </WriteFrame>
          )}
          {taken !== null && (
            <p>
              {taken === 1 ? '1 offset holds' : `${taken} offsets hold`} from the end of the
              comparison on. What was sent stays as it was; each can be corrected or withdrawn.
            </p>
          )}
        </div>
      )}
    </div>
  );
}
