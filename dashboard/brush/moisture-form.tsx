import { useState } from 'preact/hooks';
import { TextField } from '../forms/field.tsx';
import { numberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { pointerOf } from '../forms/value-pointer.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

/** One figure says little; five on different boards say something. Common practice, no source. */
const boards = [0, 1, 2, 3, 4] as const;

interface MoistureFormProps {
  placeId: string;
  /** Empty where no boards were named: the figures are then of the place. */
  batchId: string;
  /** What the boards or the place are called, for the list of what waits to be sent. */
  name: string;
  onRecorded: () => void;
}

/** Takes in what a moisture meter shows, five boards at a time. */
export function MoistureForm({ placeId, batchId, name, onRecorded }: MoistureFormProps) {
  const { live } = useShed();
  const { words, figures } = useReader();
  const { meter } = words.brush;
  const sending = useSending();
  const [isKept, setKept] = useState(false);
  const [sent, setSent] = useState<readonly number[]>([]);

  async function record(form: FormData, element: HTMLFormElement): Promise<void> {
    const typed = boards.filter((at) => textOf(form, `value-${at}`) !== '');
    setSent(typed);
    const about = { batchIds: batchId === '' ? [] : [batchId], batchName: name };
    const reading = await sending.record('createReading', about, (id) => ({
      body: {
        id,
        ...(batchId === '' ? { placeId } : { batchId }),
        quantity: 'wood-moisture',
        values: typed.map((at) => numberOf(form, `value-${at}`)),
        at: new Date(live.clock().shedNow).toISOString(),
      },
    }));
    if (reading === null) return;
    element.reset();
    setKept(reading.kind === 'waits');
    onRecorded();
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={record}>
      <div class="field-grid field-grid-five">
        {boards.map((at) => (
          <TextField
            key={at}
            label={meter.board(figures.number(at + 1))}
            name={`value-${at}`}
            kind="number"
            unit="%"
            pointer={pointerOf(at, sent)}
            problem={sending.problem}
          />
        ))}
      </div>
      {isKept && <p role="status">{words.actions.kept}</p>}
      <button type="submit" class="button button-main">
        {meter.record}
      </button>
    </WriteFrame>
  );
}
