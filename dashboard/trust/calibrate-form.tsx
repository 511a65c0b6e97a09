import { useState } from 'preact/hooks';
import type { Calibration } from '../../daemon/contract/calibration.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { fromLocalField, toLocalField } from '../format/calendar.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { CalibrationFigures } from './calibration-figures.tsx';
import { type CalibrationKind, howTyped, kindsFor } from './calibration-how.ts';

const holdsChoices = ['now', 'since', 'ever'] as const;
type Holds = (typeof holdsChoices)[number];

interface CalibrateFormProps {
  sensor: Sensor;
  /** The calibration that is corrected; a new one when left out. */
  standing?: Calibration;
  onDone: () => void;
}

/** Calibrates a sensor from now, a moment or ever on, or corrects what was entered before. */
export function CalibrateForm({ sensor, standing, onDone }: CalibrateFormProps) {
  const { api, live } = useShed();
  const { trust, things } = useReader().words;
  const words = trust.calibrate;
  const sending = useSending();
  const sent = sensor.latest.map(({ quantity }) => quantity).filter((one) => one !== 'battery');
  // Of pins it is the moisture that a hand meter tells.
  const all: Quantity[] = sensor.wood?.ohms == null ? sent : ['wood-moisture', ...sent];
  const measured = standing === undefined ? all : [standing.quantity];
  const [quantity, setQuantity] = useState<Quantity>(measured[0] ?? 'air-temperature');
  const [chosen, setChosen] = useState<CalibrationKind | null>(standing?.how.kind ?? null);
  const [holds, setHolds] = useState<Holds>(holdsOf(standing));
  const kinds = kindsFor(quantity);
  const kind = chosen !== null && kinds.includes(chosen) ? chosen : (kinds[0] ?? 'offset');
  const since = standing?.from == null ? '' : toLocalField(Date.parse(standing.from));

  /** A moment that was not touched stays what it was, to the second. */
  function fromTyped(form: FormData): { from?: string | null } {
    if (holds === 'ever') return { from: null };
    if (holds === 'now') {
      return standing === undefined ? {} : { from: new Date(live.now.value).toISOString() };
    }
    const typed = textOf(form, 'since');
    return standing !== undefined && typed === since ? {} : { from: fromLocalField(typed) };
  }

  async function calibrate(form: FormData, element: HTMLFormElement): Promise<void> {
    const note = textOf(form, 'note') || null;
    const body = { how: howTyped(kind, form), note, ...fromTyped(form) };
    const done = await sending.send((id) =>
      standing === undefined
        ? api.call('createCalibration', {
            params: { id: sensor.id },
            body: { id, quantity, ...body },
          })
        : api.call('changeCalibration', { params: { id: standing.id }, body }),
    );
    if (done === null) return;
    element.reset();
    setHolds(holdsOf(standing));
    onDone();
    await live.refresh();
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={calibrate}>
      {standing === undefined && (
        <SelectField
          label={words.quantity}
          name="quantity"
          value={quantity}
          onChange={(value) => setQuantity(value as Quantity)}
          pointer="/quantity"
          problem={sending.problem}
        >
          {measured.map((one) => (
            <option key={one} value={one}>
              {things.quantities[one]}
            </option>
          ))}
        </SelectField>
      )}
      <SelectField
        label={words.against}
        name="kind"
        value={kind}
        onChange={(value) => setChosen(value as CalibrationKind)}
        pointer="/how/kind"
        problem={sending.problem}
      >
        {kinds.map((one) => (
          <option key={one} value={one}>
            {words.ways[one]}
          </option>
        ))}
      </SelectField>
      <CalibrationFigures
        key={`${quantity} ${kind}`}
        kind={kind}
        quantity={quantity}
        before={standing?.how ?? null}
        problem={sending.problem}
      />
      <SelectField
        label={words.holds}
        name="from"
        value={holds}
        onChange={(value) => setHolds(value as Holds)}
        pointer="/from"
        problem={sending.problem}
      >
        {holdsChoices.map((one) => (
          <option key={one} value={one}>
            {words.holdsChoices[one]}
          </option>
        ))}
      </SelectField>
      {holds === 'since' && (
        <TextField
          label={words.from}
          name="since"
          kind="datetime-local"
          value={since}
          pointer="/from"
          problem={sending.problem}
        />
      )}
      <TextField
        label={words.note}
        name="note"
        value={standing?.note ?? ''}
        pointer="/note"
        problem={sending.problem}
      />
      <button type="submit" class="button">
        {standing === undefined ? words.keepNew : words.keepCorrection}
      </button>
    </WriteFrame>
  );
}

function holdsOf(standing: Calibration | undefined): Holds {
  if (standing === undefined) return 'now';
  return standing.from === null ? 'ever' : 'since';
}
