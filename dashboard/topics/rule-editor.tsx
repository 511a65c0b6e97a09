import { useEffect, useRef, useState } from 'preact/hooks';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { PayloadKind, TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import { Choice } from '../forms/choice.tsx';
import { SelectField, TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { draftOf } from './rule-draft.ts';
import { RuleValueRow } from './rule-values.tsx';
import { TrialTable } from './trial-table.tsx';
import { useTrial } from './use-trial.ts';

interface RuleEditorProps {
  overview: Overview;
  initial: TopicRuleDraft;
  /** Of the rule that is changed; null for a new one. */
  id: string | null;
  onSaved: (said: string) => void;
}

const kinds: readonly PayloadKind[] = ['text', 'json', 'senml'];

/** Writes a rule, and shows at once what it would make of the messages that came last. */
export function RuleEditor({ overview, initial, id, onSaved }: RuleEditorProps) {
  const { api } = useShed();
  const { topics } = useReader().words;
  const words = topics.editor;
  const sending = useSending();
  const [payload, setPayload] = useState<PayloadKind>(initial.payload);
  const [rows, setRows] = useState(() => initial.values.map((value, row) => ({ row, value })));
  const { trial, changed } = useTrial(api, id, overview.mayWrite);
  const fields = useRef<HTMLDivElement>(null);
  const keys = rows.map(({ row }) => row);

  /** Reads the form after what the hand did is on the page. */
  function look(): void {
    const form = fields.current?.closest('form');
    // A form that is closed has no fields for FormData.
    if (form && !form.querySelector('fieldset:disabled')) {
      changed(draftOf(new FormData(form), keys));
    }
  }
  useEffect(look, [payload, rows]);

  async function save(form: FormData): Promise<void> {
    const rule = draftOf(form, keys);
    const place = textOf(form, 'placeId');
    const saved = await sending.send((newId) =>
      id === null
        ? api.call('createTopicRule', {
            body: { id: newId, ...rule, ...(place === '' ? {} : { placeId: place }) },
          })
        : api.call('changeTopicRule', {
            params: { id },
            body: { ...rule, time: rule.time ?? null },
          }),
    );
    if (saved !== null) onSaved(words.saved(saved.pattern));
  }

  const { problem } = sending;
  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={save}>
      <div ref={fields} class="rule-fields" onInput={look} onChange={look}>
        <div class="rule-pair">
          <TextField
            label={words.pattern}
            name="pattern"
            value={initial.pattern}
            pointer="/pattern"
            problem={problem}
            hint={words.patternHint}
          />
          <TextField
            label={words.sensor}
            name="sensor"
            value={initial.sensor}
            pointer="/sensor"
            problem={problem}
            hint={words.sensorHint}
          />
        </div>
        <Choice
          legend={words.payload}
          name="payload"
          options={kinds.map((value) => ({ value, words: topics.payloads[value] }))}
          value={payload}
          onChange={(kind) => {
            setPayload(kind);
            // Text holds one number.
            if (kind === 'text') setRows(rows.slice(0, 1));
          }}
        />
        {rows.map(({ row, value }, index) => (
          <RuleValueRow
            key={row}
            row={row}
            index={index}
            payload={payload}
            value={value}
            problem={problem}
            onRemove={
              rows.length > 1 || payload === 'senml'
                ? () => setRows(rows.filter((other) => other.row !== row))
                : null
            }
          />
        ))}
        {payload !== 'text' && (
          <button
            type="button"
            class="button"
            onClick={() =>
              setRows([
                ...rows,
                { row: Math.max(-1, ...keys) + 1, value: { quantity: 'relative-humidity' } },
              ])
            }
          >
            {words.oneMore}
          </button>
        )}
        {payload !== 'senml' && (
          <div class="rule-pair">
            <TextField
              label={words.timeFrom}
              name="time-from"
              value={initial.time?.from ?? ''}
              pointer="/time"
              problem={problem}
              hint={words.timeFromHint}
            />
            <SelectField
              label={words.timeFormat}
              name="time-format"
              value={initial.time?.format ?? 'any'}
              pointer="/time/format"
              problem={null}
            >
              {Object.entries(words.timeFormats).map(([format, name]) => (
                <option key={format} value={format}>
                  {name}
                </option>
              ))}
            </SelectField>
          </div>
        )}
      </div>
      <section class="trial-panel" aria-labelledby="trial-title">
        <h3 id="trial-title">{topics.trial.title}</h3>
        <div aria-live="polite">
          {trial === null ? (
            <p class="quiet">{topics.trial.nothingYet}</p>
          ) : (
            <TrialTable trial={trial} />
          )}
        </div>
      </section>
      {id === null && (
        <SelectField
          label={words.whereHeardHang}
          name="placeId"
          pointer="/placeId"
          problem={problem}
        >
          <option value="">{words.nowhereYet}</option>
          {overview.places.map((place) => (
            <option key={place.id} value={place.id}>
              {place.name}
            </option>
          ))}
        </SelectField>
      )}
      <button type="submit" class="button button-main">
        {id === null ? words.save : words.saveChange}
      </button>
    </WriteFrame>
  );
}
