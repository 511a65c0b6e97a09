import { listLine } from '../format/lists.ts';
import { TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { RoomSize, volumeOf } from '../setup/room-size.tsx';
import { useShed } from '../shed-context.ts';
import { Screen } from './screen.tsx';
import type { StepProps } from './step-props.ts';

/** The room that the boards cure in, with its size. */
export function RoomStep({ overview, again, goOn }: StepProps) {
  const { api } = useShed();
  const { words, locale } = useReader();
  const said = words.firstRun.room;
  const sending = useSending();
  const { places } = overview;

  async function make(form: FormData): Promise<void> {
    const body = { name: textOf(form, 'name'), kind: 'room' as const, ...volumeOf(form) };
    const place = await sending.send((id) => api.call('createPlace', { body: { id, ...body } }));
    if (place === null) return;
    await again();
    goOn();
  }

  return (
    <Screen step="room" says={said.says} isDone={places.length > 0}>
      {places.length > 0 && (
        <p>
          {said.there(
            listLine(
              places.map(({ name }) => name),
              locale,
            ),
          )}
        </p>
      )}
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={make}>
        <TextField
          label={words.setup.place.name}
          name="name"
          value={said.usualName}
          pointer="/name"
          problem={sending.problem}
        />
        <RoomSize problem={sending.problem} />
        <button type="submit" class={places.length > 0 ? 'button' : 'button button-main'}>
          {said.make}
        </button>
      </WriteFrame>
      <p>
        <a href="#/setup">{said.otherKind}</a>
      </p>
    </Screen>
  );
}
