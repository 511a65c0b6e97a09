import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import type { ActionProps } from './action-props.ts';

/** “20 of these 60 went up today”: some boards become a batch of their own. */
export function SplitForm({ batch, onDone }: ActionProps) {
  const { api, live } = useShed();
  const sending = useSending();
  const places = live.overview.value?.places ?? [];

  async function record(form: FormData): Promise<void> {
    const placeId = textOf(form, 'placeId');
    const name = textOf(form, 'name');
    const split = await sending.send((id) =>
      api.call('splitBatch', {
        params: { id: batch.id },
        body: {
          id,
          boards: numberOf(form, 'boards'),
          at: whenOf(form, 'at', live.now.peek()),
          ...(placeId === '' ? {} : { placeId }),
          ...(name === '' ? {} : { name }),
        },
      }),
    );
    if (split === null) return;
    await live.refresh();
    const { child, parent, warnings } = split;
    const said = `${child.boards.count} boards are now “${child.name}”; ${parent.boards.count} stayed.`;
    onDone([said, ...warnings.map(({ text }) => text)].join(' '));
    location.hash = batchAddress(child.id);
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <TextField
        label={`How many of these ${batch.boards.count}`}
        name="boards"
        kind="number"
        pointer="/boards"
        problem={sending.problem}
      />
      <SelectField label="Went to" name="placeId" pointer="/placeId" problem={sending.problem}>
        <option value="">they stayed where they lie</option>
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
      <TextField
        label="Name of the new batch"
        name="name"
        pointer="/name"
        problem={sending.problem}
        hint={`“${batch.name}, … boards” when left empty`}
      />
      <button type="submit" class="button button-main">
        Split them off
      </button>
    </WriteFrame>
  );
}
