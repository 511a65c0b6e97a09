import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WhenField, whenOf } from '../forms/when-field.tsx';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { type ActionProps, about } from './action-props.ts';

/** “20 of these 60 went up today”: some boards become a batch of their own. */
export function SplitForm({ batch, onDone }: ActionProps) {
  const { live } = useShed();
  const { words, figures } = useReader();
  const { split: splitWords, move, kept } = words.actions;
  const sending = useSending();
  const places = live.overview.value?.places ?? [];

  async function record(form: FormData): Promise<void> {
    const placeId = textOf(form, 'placeId');
    const name = textOf(form, 'name');
    const split = await sending.record('splitBatch', about(batch), (id) => ({
      params: { id: batch.id },
      body: {
        id,
        boards: numberOf(form, 'boards'),
        at: whenOf(form, 'at', live.clock().shedNow),
        ...(placeId === '' ? {} : { placeId }),
        ...(name === '' ? {} : { name }),
      },
    }));
    if (split === null) return;
    if (split.kind === 'waits') return onDone(kept);
    await live.refresh();
    const { child, parent, warnings } = split.reply;
    onDone(
      <>
        <p>{splitWords.recorded(child.boards.count, child.name, parent.boards.count)}</p>
        {warnings.map((warning) => (
          <p key={warning.code}>
            <Said sentence={warning} />
          </p>
        ))}
      </>,
    );
    location.hash = batchAddress(child.id);
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <TextField
        label={splitWords.howMany(figures.number(batch.boards.count))}
        name="boards"
        kind="number"
        pointer="/boards"
        problem={sending.problem}
      />
      <SelectField
        label={splitWords.wentTo}
        name="placeId"
        pointer="/placeId"
        problem={sending.problem}
      >
        <option value="">{splitWords.stayed}</option>
        {places.map((place) => (
          <option key={place.id} value={place.id}>
            {place.name}
          </option>
        ))}
      </SelectField>
      <WhenField
        legend={move.when}
        name="at"
        pointer="/at"
        problem={sending.problem}
        now={live.now.peek()}
      />
      <TextField
        label={splitWords.name}
        name="name"
        pointer="/name"
        problem={sending.problem}
        hint={splitWords.nameHint(batch.name)}
      />
      <button type="submit" class="button button-main">
        {splitWords.record}
      </button>
    </WriteFrame>
  );
}
