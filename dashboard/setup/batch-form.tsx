import type { ComponentChildren } from 'preact';
import { useCallback, useState } from 'preact/hooks';
import type { BatchSummary, NewBatch, Species } from '../../daemon/contract/batch.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Plan, Surface } from '../../daemon/contract/plan.ts';
import type { Trade } from '../../daemon/contract/trade.ts';
import { type BegunForm, useBegunForm } from '../forms/begun-form.ts';
import { Choice } from '../forms/choice.tsx';
import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { BoardSize, type Size } from './board-size.tsx';
import { optionsOf } from './options.ts';
import { TimberFields, timberOf } from './timber-fields.tsx';

interface BatchFormProps {
  places: Overview['places'];
  plans: readonly Plan[];
  /** Those there are already: the newest is the start for the next. */
  batches: readonly BatchSummary[];
  /** Where the boards lie unless they say otherwise; that of the last batch when left out. */
  placeId?: string;
  /** Only what there has to be; the rest is folded away. */
  isBrief?: boolean;
  onStarted: (batchId: string) => void;
}

/** Starts a batch; “same as last batch” is where it begins. */
export function BatchForm(props: BatchFormProps) {
  const { api } = useShed();
  const { replied } = useReply(useCallback(() => api.call('trade', {}), [api]));
  const last = [...props.batches].sort((a, b) => b.createdAt.localeCompare(a.createdAt))[0] ?? null;
  // Begun anew once the last batch is known, so that its figures stand in the fields.
  const begun = useBegunForm(last);
  return (
    <div onInput={begun.touched}>
      <NewBatchForm
        key={begun.start?.id ?? 'first'}
        {...props}
        begun={begun}
        trade={replied.kind === 'there' ? replied.reply : null}
      />
    </div>
  );
}

type NewBatchProps = BatchFormProps & {
  begun: BegunForm<BatchSummary | null>;
  trade: Trade | null;
};

function NewBatchForm({ places, plans, begun, trade, placeId, isBrief, onStarted }: NewBatchProps) {
  const last = begun.start;
  const { api, live } = useShed();
  const { words } = useReader();
  const ownName = useOwnName();
  const said = words.setup.batch;
  const sending = useSending();
  const [surface, setSurface] = useState<Surface>(last?.surface ?? 'sawn');
  const [size, setSize] = useState<Size>({
    lengthMm: last ? String(last.boards.lengthMm) : '',
    widthMm: last ? String(last.boards.widthMm) : '',
    thicknessMm: last ? String(last.boards.thicknessMm) : '',
  });
  const { problem } = sending;

  async function start(form: FormData): Promise<void> {
    begun.sending();
    const batch = await sending.send((id) =>
      api.call('createBatch', { body: { id, ...batchOf(form, surface) } }),
    );
    if (batch === null) return;
    begun.taken();
    await live.refresh();
    onStarted(batch.id);
  }

  const forSurface = plans.filter((plan) => plan.surface === surface);
  const lies = placeId ?? last?.placeId;
  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={start}>
      {last !== null && <p class="quiet">{said.asLast(last.name)}</p>}
      <TextField
        label={said.name}
        name="name"
        pointer="/name"
        problem={problem}
        hint={said.nameHint}
      />
      <SelectField label={said.where} name="placeId" pointer="/placeId" problem={problem}>
        {places.map((place) => (
          <option key={place.id} value={place.id} selected={place.id === lies}>
            {place.name}
          </option>
        ))}
      </SelectField>
      <Choice
        legend={said.surface}
        name="surface"
        options={optionsOf(words.things.surfaces)}
        value={surface}
        onChange={setSurface}
      />
      <SelectField label={said.timber} name="species" pointer="/species" problem={problem}>
        {optionsOf(words.things.species).map(({ value, words: name }) => (
          <option key={value} value={value} selected={value === last?.species}>
            {name}
          </option>
        ))}
      </SelectField>
      <TextField
        label={said.boards}
        name="count"
        kind="number"
        pointer="/boards/count"
        problem={problem}
      />
      <BoardSize
        trade={trade}
        size={size}
        onSize={(tapped) => {
          begun.touched();
          setSize(tapped);
        }}
        problem={problem}
      />
      <Folded isFolded={isBrief === true}>
        <SelectField label={said.plan} name="planId" pointer="/planId" problem={problem}>
          <option value="">{said.usualPlan}</option>
          {forSurface.map((plan) => (
            <option key={plan.id} value={plan.id} selected={plan.id === last?.planId}>
              {ownName(plan.name)}
            </option>
          ))}
        </SelectField>
        <TimberFields
          last={last?.timber ?? null}
          problem={problem}
          leadCaution={trade?.leadCautionSaid ?? null}
        />
      </Folded>
      <button type="submit" class="button button-main">
        {said.start}
      </button>
    </WriteFrame>
  );
}

/** What can be said later too; closed at first where it is folded. */
function Folded({ isFolded, children }: { isFolded: boolean; children: ComponentChildren }) {
  const { more } = useReader().words.setup.batch;
  if (!isFolded) return <>{children}</>;
  return (
    <details class="more">
      <summary>{more}</summary>
      <div class="when-field">{children}</div>
    </details>
  );
}

function batchOf(form: FormData, surface: Surface): NewBatch {
  const planId = textOf(form, 'planId');
  return {
    name: textOf(form, 'name'),
    placeId: textOf(form, 'placeId'),
    species: textOf(form, 'species') as Species,
    surface,
    boards: {
      count: numberOf(form, 'count'),
      lengthMm: numberOf(form, 'lengthMm'),
      widthMm: numberOf(form, 'widthMm'),
      thicknessMm: numberOf(form, 'thicknessMm'),
    },
    ...(planId === '' ? {} : { planId }),
    ...timberOf(form),
  };
}
