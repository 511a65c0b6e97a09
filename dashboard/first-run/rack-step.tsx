import { listLine } from '../format/lists.ts';
import { useBegunForm } from '../forms/begun-form.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { RackTakes } from '../setup/place-form.tsx';
import { useShed } from '../shed-context.ts';
import { Screen } from './screen.tsx';
import type { StepProps } from './step-props.ts';

/** The racks in the room, one after the other. */
export function RackStep({ overview, again }: StepProps) {
  const { api } = useShed();
  const { words, figures, locale } = useReader();
  const said = words.firstRun.rack;
  const sending = useSending();
  const racks = overview.places.filter(({ kind }) => kind === 'rack');
  const rooms = overview.places.filter(({ kind }) => kind === 'room');
  const usualName = said.usualName(figures.number(racks.length + 1));
  const { problem } = sending;
  // Begun anew for the next rack.
  const begun = useBegunForm(racks.length);

  async function make(form: FormData): Promise<void> {
    const within = textOf(form, 'within');
    const capacityM = optionalNumberOf(form, 'capacityM');
    const capacityBoards = optionalNumberOf(form, 'capacityBoards');
    const body = {
      ...{ name: textOf(form, 'name'), kind: 'rack' as const },
      ...(within === '' ? {} : { within }),
      ...(capacityM === null ? {} : { capacityM }),
      ...(capacityBoards === null ? {} : { capacityBoards }),
    };
    begun.sending();
    const place = await sending.send((id) => api.call('createPlace', { body: { id, ...body } }));
    if (place === null) return;
    begun.taken();
    await again();
  }

  return (
    <Screen step="rack" says={said.says} isDone={racks.length > 0}>
      <p role="status">
        {racks.length > 0 &&
          said.there(
            listLine(
              racks.map(({ name }) => name),
              locale,
            ),
          )}
      </p>
      <div onInput={begun.touched}>
        <WriteFrame key={begun.start} problem={sending.problem} busy={sending.busy} onSend={make}>
          <TextField
            label={said.name}
            name="name"
            value={usualName}
            pointer="/name"
            problem={problem}
          />
          {rooms.length === 1 && <input type="hidden" name="within" value={rooms[0]?.id ?? ''} />}
          {rooms.length > 1 && (
            <SelectField
              label={words.setup.place.within}
              name="within"
              pointer="/within"
              problem={problem}
            >
              {rooms.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </SelectField>
          )}
          <RackTakes problem={problem} />
          <button type="submit" class={racks.length > 0 ? 'button' : 'button button-main'}>
            {said.make}
          </button>
        </WriteFrame>
      </div>
    </Screen>
  );
}
