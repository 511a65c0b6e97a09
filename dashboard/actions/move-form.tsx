import { SelectField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import type { ActionProps } from './action-props.ts';

/** Records that the boards were carried to another place. */
export function MoveForm({ batch, onDone }: ActionProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const places = live.overview.value?.places ?? [];

  async function record(form: FormData): Promise<void> {
    const placeId = textOf(form, 'placeId');
    const move = await sending.send((id) =>
      api.call('createMove', {
        params: { id: batch.id },
        body: { id, placeId, at: whenOf(form, 'at', live.now.peek()) },
      }),
    );
    const name = places.find((place) => place.id === placeId)?.name ?? 'there';
    if (move === null) return;
    const said = `Recorded: the boards lie at ${name}.`;
    onDone([said, ...move.warnings.map(({ text }) => text)].join(' '));
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <SelectField label="To" name="placeId" pointer="/placeId" problem={sending.problem}>
        {places.map((place) => (
          <option key={place.id} value={place.id}>
            {place.name}
          </option>
        ))}
      </SelectField>
      <WhenField
        legend="When"
        name="at"
        pointer="/at"
        problem={sending.problem}
        now={live.now.peek()}
      />
      <button type="submit" class="button button-main">
        Record the move
      </button>
    </WriteFrame>
  );
}
