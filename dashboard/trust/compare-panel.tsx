import { useCallback, useState } from 'preact/hooks';
import type { Comparison } from '../../daemon/contract/comparison.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
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
  const words = useReader().words.trust.compare;
  const { replied } = useReply(useCallback(() => api.call('listSensors', {}), [api]));
  const comparing = useSending();
  const [tooFew, setTooFew] = useState<object | null>(null);
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
    setTooFew(chosen.length < 2 ? {} : null);
    if (chosen.length < 2) return;
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
    return <p class="quiet">{words.needsTwo}</p>;
  }
  return (
    <div class="compare">
      <p>{words.about}</p>
      <WriteFrame problem={comparing.problem} fault={tooFew} busy={comparing.busy} onSend={compare}>
        <fieldset class="choice compare-choice">
          <legend>{words.inTheBox}</legend>
          {sensors.map(({ id, name }) => (
            <label key={id} class="compare-sensor">
              <input
                type="checkbox"
                name="sensor"
                value={id}
                defaultChecked
                {...(tooFew === null
                  ? {}
                  : { 'aria-invalid': 'true', 'aria-describedby': 'compare-too-few' })}
              />
              <span>{name ?? id}</span>
            </label>
          ))}
          {tooFew !== null && (
            <p class="field-fault" id="compare-too-few">
              {words.chooseTwo}
            </p>
          )}
        </fieldset>
        <TextField
          label={words.from}
          name="from"
          kind="datetime-local"
          value={toLocalField(now - nightHours * hourMs)}
          pointer="/from"
          problem={comparing.problem}
        />
        <TextField
          label={words.to}
          name="to"
          kind="datetime-local"
          value={toLocalField(now)}
          pointer="/to"
          problem={comparing.problem}
        />
        <button type="submit" class="button">
          {words.compare}
        </button>
      </WriteFrame>
      {comparison !== null && (
        <div class="compare-found" role="status">
          <ComparisonTable comparison={comparison} names={names} />
          {comparison.offers.length > 0 && taken === null && (
            <WriteFrame problem={accepting.problem} busy={accepting.busy} onSend={accept}>
              <fieldset class="choice compare-choice">
                <legend>{words.whose}</legend>
                {offered.map((id) => (
                  <label key={id} class="compare-sensor">
                    <input type="checkbox" name="offered" value={id} defaultChecked />
                    <span>{names.get(id) ?? id}</span>
                  </label>
                ))}
              </fieldset>
              <button type="submit" class="button">
                {words.take}
              </button>
            </WriteFrame>
          )}
          {taken !== null && <p>{words.taken(taken)}</p>}
        </div>
      )}
    </div>
  );
}
