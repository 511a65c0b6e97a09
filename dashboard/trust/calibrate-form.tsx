import { useState } from 'preact/hooks';
import type { CalibrationHow, NewCalibration } from '../../daemon/contract/calibration.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { numberOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { quantityWords } from '../words/thing-words.ts';
import { calibrationWords, saltWords } from '../words/trust-words.ts';

type Kind = CalibrationHow['kind'];

/** Which ways of calibrating fit a quantity, the usual one first. */
function kindsFor(quantity: Quantity): Kind[] {
  if (quantity === 'wood-resistance') return ['test-resistor'];
  if (quantity === 'relative-humidity') return ['hand-meter', 'offset', 'two-point', 'salts'];
  if (quantity.endsWith('temperature')) return ['hand-meter', 'offset', 'two-point', 'ice-point'];
  return ['hand-meter', 'offset', 'two-point'];
}

/** Calibrates a sensor from now on, or from ever. */
export function CalibrateForm({ sensor, onDone }: { sensor: Sensor; onDone: () => void }) {
  const { api, live } = useShed();
  const sending = useSending();
  const sent = sensor.latest.map(({ quantity }) => quantity).filter((one) => one !== 'battery');
  // Of pins it is the moisture that a hand meter tells.
  const measured: Quantity[] = sensor.wood?.ohms == null ? sent : ['wood-moisture', ...sent];
  const [quantity, setQuantity] = useState<Quantity>(measured[0] ?? 'air-temperature');
  const [chosen, setChosen] = useState<Kind | null>(null);
  const kinds = kindsFor(quantity);
  const kind = chosen !== null && kinds.includes(chosen) ? chosen : (kinds[0] ?? 'offset');

  async function calibrate(form: FormData, element: HTMLFormElement): Promise<void> {
    // A field that is empty or no number is refused by the daemon, at its place.
    const how = howOf(kind, form) as CalibrationHow;
    const from = form.get('from') === 'ever' ? { from: null } : {};
    const done = await sending.send((id) =>
      api.call('createCalibration', {
        params: { id: sensor.id },
        body: { id, quantity, how, ...from } as NewCalibration,
      }),
    );
    if (done === null) return;
    element.reset();
    onDone();
    await live.refresh();
  }

  return (
    <WriteFrame problem={sending.problem} busy={sending.busy} onSend={calibrate}>
      <SelectField
        label="What it measures"
        name="quantity"
        value={quantity}
        onChange={(value) => setQuantity(value as Quantity)}
        pointer="/quantity"
        problem={sending.problem}
      >
        {measured.map((one) => (
          <option key={one} value={one}>
            {quantityWords[one].name}
          </option>
        ))}
      </SelectField>
      <SelectField
        label="Against what"
        name="kind"
        value={kind}
        onChange={(value) => setChosen(value as Kind)}
        pointer="/how/kind"
        problem={sending.problem}
      >
        {kinds.map((one) => (
          <option key={one} value={one}>
            {calibrationWords[one]}
          </option>
        ))}
      </SelectField>
      <Figures key={`${quantity} ${kind}`} kind={kind} quantity={quantity} sending={sending} />
      <SelectField label="Holds" name="from" pointer="/from" problem={sending.problem}>
        <option value="now">from now on</option>
        <option value="ever">for all its readings, also those of before</option>
      </SelectField>
      <button type="submit" class="button">
        Calibrate
      </button>
    </WriteFrame>
  );
}

interface FiguresProps {
  kind: Kind;
  quantity: Quantity;
  sending: ReturnType<typeof useSending>;
}

function Figures({ kind, quantity, sending }: FiguresProps) {
  const { unit } = quantityWords[quantity];
  const { problem } = sending;
  const figure = (label: string, name: string, pointer: string, ofUnit = unit) => (
    <TextField
      label={label}
      name={name}
      kind="number"
      unit={ofUnit}
      pointer={pointer}
      problem={problem}
    />
  );
  const salt = (i: number, label: string, isOptional: boolean) => (
    <>
      <SelectField
        label={label}
        name={`salt${i}`}
        pointer={`/how/points/${i}/salt`}
        problem={problem}
      >
        {isOptional && <option value="">none</option>}
        {Object.entries(saltWords).map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </SelectField>
      {figure(
        `Temperature over the ${label.toLowerCase()}`,
        `temp${i}`,
        `/how/points/${i}/tempC`,
        '°C',
      )}
      {figure(`Shown over the ${label.toLowerCase()}`, `shown${i}`, `/how/points/${i}/shown`)}
    </>
  );
  switch (kind) {
    case 'hand-meter':
      return (
        <>
          {figure('The hand meter shows', 'actual', '/how/actual')}
          <p class="field-hint">
            Hold it beside the sensor until both stand still. What the sensor sent is looked up.
          </p>
        </>
      );
    case 'offset':
      return figure('Add to what it sends', 'add', '/how/add');
    case 'two-point':
      return (
        <>
          {[0, 1].map((i) => (
            <div key={i} class="form-row">
              {figure(`It shows, point ${i + 1}`, `shown${i}`, `/how/points/${i}/shown`)}
              {figure(`So it is, point ${i + 1}`, `actual${i}`, `/how/points/${i}/actual`)}
            </div>
          ))}
        </>
      );
    case 'salts':
      return (
        <>
          {salt(0, 'First salt', false)}
          {salt(1, 'Second salt', true)}
          <p class="field-hint">
            A damp paste of salt in a closed jar, half a day at steady temperature. Keep salts away
            from eyes and food, and from children.
          </p>
        </>
      );
    case 'ice-point':
      return (
        <>
          {figure('It shows in ice water', 'shown', '/how/shown')}
          <p class="field-hint">
            Crushed ice with a little water, stirred; only for a probe that may get wet.
          </p>
        </>
      );
    case 'test-resistor':
      return (
        <>
          {figure('The resistor has', 'ohms', '/how/ohms')}
          {figure('It shows with the resistor between its leads', 'shown', '/how/shown')}
        </>
      );
  }
}

function howOf(kind: Kind, form: FormData): object {
  const figure = (name: string) => numberOf(form, name);
  switch (kind) {
    case 'hand-meter':
      return { kind, actual: figure('actual') };
    case 'offset':
      return { kind, add: figure('add') };
    case 'ice-point':
      return { kind, shown: figure('shown') };
    case 'test-resistor':
      return { kind, ohms: figure('ohms'), shown: figure('shown') };
    case 'two-point':
      return {
        kind,
        points: [0, 1].map((i) => ({ shown: figure(`shown${i}`), actual: figure(`actual${i}`) })),
      };
    case 'salts':
      return {
        kind,
        points: [0, 1]
          .filter((i) => form.get(`salt${i}`))
          .map((i) => ({
            salt: form.get(`salt${i}`),
            tempC: figure(`temp${i}`),
            shown: figure(`shown${i}`),
          })),
      };
  }
}
