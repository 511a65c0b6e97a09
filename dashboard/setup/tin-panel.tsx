import { useCallback, useState } from 'preact/hooks';
import type { Tin } from '../../daemon/contract/tin.ts';
import { figure } from '../format/figures.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { driersWords, tinKindWords } from '../words/trade-words.ts';

/** The tins: asked once, then chosen with each coat. */
export function TinPanel() {
  const { api } = useShed();
  const { replied, again } = useReply(useCallback(() => api.call('listTins', {}), [api]));
  const tins = replied.kind === 'there' ? replied.reply : [];
  return (
    <>
      <ul class="plan-list">
        {tins.map((tin) => (
          <TinEntry key={tin.id} tin={tin} onChanged={again} />
        ))}
      </ul>
      <TinForm onEntered={again} />
    </>
  );
}

function TinEntry({ tin, onChanged }: { tin: Tin; onChanged: () => void }) {
  const { api, calendar } = useShed();
  const sending = useSending();
  const facts = [
    tinKindWords[tin.kind],
    tin.colour,
    tin.volumeL === null ? null : `${figure(tin.volumeL)} L`,
    tin.usedL > 0 ? `${figure(tin.usedL)} L used` : null,
    tin.openedAt === null
      ? 'not opened yet'
      : `open since ${calendar.date(Date.parse(tin.openedAt))}`,
    tin.emptiedAt === null ? null : 'empty',
  ];

  async function emptied(): Promise<void> {
    const body = { empty: tin.emptiedAt === null };
    const reply = await sending.send(() => api.call('changeTin', { params: { id: tin.id }, body }));
    if (reply !== null) onChanged();
  }

  return (
    <li class="plan">
      <h3>{tin.name}</h3>
      <p>{facts.filter((fact) => fact !== null).join(', ')}</p>
      {tin.doubts.map((doubt) => (
        <p key={doubt.code} class="caution">
          {doubt.text}
        </p>
      ))}
      <button
        type="button"
        class="button button-quiet"
        disabled={sending.busy}
        onClick={() => void emptied()}
      >
        {tin.emptiedAt === null ? 'It is empty' : 'Not empty after all'}
      </button>
    </li>
  );
}

function TinForm({ onEntered }: { onEntered: () => void }) {
  const { api, live } = useShed();
  const sending = useSending();
  const [kind, setKind] = useState<Tin['kind']>('paint');
  const [driers, setDriers] = useState<Tin['driers']>('unknown');
  const [open, setOpen] = useState<'yes' | 'no'>('yes');
  const { problem } = sending;

  async function enter(form: FormData, element: HTMLFormElement): Promise<void> {
    const tin = await sending.send((id) =>
      api.call('createTin', {
        body: {
          ...{ id, name: textOf(form, 'name'), kind, driers },
          colour: textOf(form, 'colour') || null,
          volumeL: optionalNumberOf(form, 'volumeL'),
          openedAt: open === 'yes' ? whenOf(form, 'openedAt', live.now.peek()) : null,
        },
      }),
    );
    if (tin === null) return;
    element.reset();
    onEntered();
  }

  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={enter}>
      <TextField
        label="What is written on it"
        name="name"
        pointer="/name"
        problem={problem}
        hint="So that you find it again, for example Red, 10 L, May"
      />
      <Choice
        legend="What is in it"
        name="kind"
        options={entries(tinKindWords)}
        value={kind}
        onChange={setKind}
      />
      <div class="field-grid">
        <TextField label="Colour" name="colour" pointer="/colour" problem={problem} />
        <TextField
          label="Holds"
          name="volumeL"
          kind="number"
          unit="L"
          pointer="/volumeL"
          problem={problem}
        />
      </div>
      <Choice
        legend="Opened"
        name="opened"
        options={[
          { value: 'yes', words: 'Yes' },
          { value: 'no', words: 'Not yet' },
        ]}
        value={open}
        onChange={setOpen}
      />
      {open === 'yes' && (
        <WhenField
          legend="When"
          name="openedAt"
          pointer="/openedAt"
          problem={problem}
          now={live.now.peek()}
        />
      )}
      <Choice
        legend="Driers"
        name="driers"
        options={entries(driersWords)}
        value={driers}
        onChange={setDriers}
      />
      <button type="submit" class="button button-main">
        Enter this tin
      </button>
    </WriteFrame>
  );
}

const entries = <T extends string>(words: Readonly<Record<T, string>>) =>
  (Object.entries(words) as [T, string][]).map(([value, text]) => ({ value, words: text }));
