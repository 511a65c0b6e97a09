import { useState } from 'preact/hooks';
import { SelectField } from '../forms/field.tsx';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { type ActionProps, about } from './action-props.ts';

/** Records that the boards were carried to another place. */
export function MoveForm({ batch, onDone }: ActionProps) {
  const { live } = useShed();
  const { move: words, kept } = useReader().words.actions;
  const sending = useSending();
  const places = live.overview.value?.places ?? [];
  const [placeId, setPlaceId] = useState(places[0]?.id ?? '');
  const place = places.find(({ id }) => id === placeId);

  async function record(form: FormData): Promise<void> {
    const move = await sending.record('createMove', about(batch), (id) => ({
      params: { id: batch.id },
      body: { id, placeId, at: whenOf(form, 'at', live.clock().shedNow) },
    }));
    if (move === null) return;
    if (move.kind === 'waits') return onDone(kept);
    onDone(
      <>
        <p>{words.recorded(place?.name ?? words.somewhere)}</p>
        {move.reply.warnings.map((warning) => (
          <p key={warning.code}>
            <Said sentence={warning} />
          </p>
        ))}
      </>,
    );
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <SelectField
        label={words.to}
        name="placeId"
        value={placeId}
        onChange={setPlaceId}
        pointer="/placeId"
        problem={sending.problem}
      >
        {places.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </SelectField>
      {place?.kind === 'wall' && <p class="from-the-ground">{words.fromTheGround}</p>}
      <WhenField
        legend={words.when}
        name="at"
        pointer="/at"
        problem={sending.problem}
        now={live.now.peek()}
      />
      <button type="submit" class="button button-main">
        {words.record}
      </button>
    </WriteFrame>
  );
}
