import { useCallback, useState } from 'preact/hooks';
import type { Tin } from '../../daemon/contract/tin.ts';
import { plainList } from '../format/lists.ts';
import { Choice } from '../forms/choice.tsx';
import { TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { optionsOf } from './options.ts';

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
  const { api } = useShed();
  const { words, figures, calendar } = useReader();
  const said = words.setup.tins;
  const sending = useSending();
  const facts = [
    said.kinds[tin.kind],
    tin.colour,
    tin.volumeL === null ? null : figures.measure('litres', tin.volumeL),
    tin.usedL > 0 ? said.used(figures.measure('litres', tin.usedL)) : null,
    tin.openedAt === null
      ? said.notOpened
      : said.openSince(calendar.date(Date.parse(tin.openedAt))),
    tin.emptiedAt === null ? null : said.empty,
  ];

  async function emptied(): Promise<void> {
    const body = { empty: tin.emptiedAt === null };
    const reply = await sending.send(() => api.call('changeTin', { params: { id: tin.id }, body }));
    if (reply !== null) onChanged();
  }

  return (
    <li class="plan">
      <h3>{tin.name}</h3>
      <p>{plainList(facts.filter((fact) => fact !== null))}</p>
      {tin.doubts.map((doubt) => (
        <p key={doubt.code} class="caution">
          <Said sentence={doubt} />
        </p>
      ))}
      <button
        type="button"
        class="button button-quiet"
        aria-disabled={sending.busy}
        onClick={() => void emptied()}
      >
        {tin.emptiedAt === null ? said.isEmpty : said.notEmpty}
      </button>
    </li>
  );
}

function TinForm({ onEntered }: { onEntered: () => void }) {
  const { api, live } = useShed();
  const said = useReader().words.setup.tins;
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
        label={said.name}
        name="name"
        pointer="/name"
        problem={problem}
        hint={said.nameHint}
      />
      <Choice
        legend={said.kind}
        name="kind"
        options={optionsOf(said.kinds)}
        value={kind}
        onChange={setKind}
      />
      <div class="field-grid">
        <TextField label={said.colour} name="colour" pointer="/colour" problem={problem} />
        <MeasureField
          label={said.holds}
          name="volumeL"
          measure="litres"
          pointer="/volumeL"
          problem={problem}
        />
      </div>
      <Choice
        legend={said.opened}
        name="opened"
        options={[
          { value: 'yes', words: said.yes },
          { value: 'no', words: said.notYet },
        ]}
        value={open}
        onChange={setOpen}
      />
      {open === 'yes' && (
        <WhenField
          legend={said.when}
          name="openedAt"
          pointer="/openedAt"
          problem={problem}
          now={live.now.peek()}
        />
      )}
      <Choice
        legend={said.driers}
        name="driers"
        options={optionsOf(said.driersKnown)}
        value={driers}
        onChange={setDriers}
      />
      <button type="submit" class="button button-main">
        {said.enter}
      </button>
    </WriteFrame>
  );
}
