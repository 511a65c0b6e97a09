import { useState } from 'preact/hooks';
import type { MixtureReply } from '../../daemon/contract/mixture.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { optionalNumberOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';
import { PotAnswer } from './pot-answer.tsx';
import type { PotQuery } from './pot-query.ts';
import { ShoppingPanel } from './shopping-panel.tsx';

/** The mixing bench: what goes into the pot at hand, in figures that are read at arm’s length. */
export function PotPage() {
  const { api, live } = useShed();
  const sending = useSending();
  const [batchId, setBatchId] = useState('');
  const [answer, setAnswer] = useState<{ query: PotQuery; reply: MixtureReply } | null>(null);
  const overview = live.overview.value;
  if (overview === null) return <main class="page" />;
  const batches = overview.places.flatMap((place) => place.batches);

  async function reckon(form: FormData): Promise<void> {
    const given = (name: string) => optionalNumberOf(form, name) ?? undefined;
    const centimetres = (name: string) => {
      const value = given(name);
      return value === undefined ? undefined : value * 10;
    };
    const query: PotQuery = {
      ...(batchId === ''
        ? {
            areaM2: given('areaM2'),
            spreadingM2PerL: given('spreadingM2PerL'),
            paint: given('paint'),
            rawLinseedOil: given('rawLinseedOil'),
            turpentine: given('turpentine'),
          }
        : { batchId }),
      lossPercent: given('lossPercent'),
      potDiameterMm: centimetres('potDiameter'),
      potTopDiameterMm: centimetres('potTopDiameter'),
      potHeightMm: centimetres('potHeight'),
      paintDensityKgPerL: given('paintDensityKgPerL'),
      havePaintL: given('havePaintL'),
      haveRawLinseedOilL: given('haveRawLinseedOilL'),
      haveTurpentineL: given('haveTurpentineL'),
    };
    const reply = await sending.send(() => api.call('mixture', { query }));
    if (reply !== null) setAnswer({ query, reply });
  }

  const field = (name: string, label: string, unit?: string, value?: string, pointer = name) => (
    <TextField
      label={label}
      name={name}
      kind="number"
      pointer={`/${pointer}`}
      problem={sending.problem}
      {...(unit === undefined ? {} : { unit })}
      {...(value === undefined ? {} : { value })}
    />
  );
  return (
    <main class="page pot">
      <h1>The pot</h1>
      <form
        class="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void reckon(new FormData(event.currentTarget));
        }}
      >
        <div class="form-body">
          <SelectField
            label="For which boards"
            name="batchId"
            value={batchId}
            onChange={setBatchId}
            pointer="/batchId"
            problem={sending.problem}
            hint="The next coat of their plan"
          >
            <option value="">An area of my own</option>
            {batches.map((batch) => (
              <option key={batch.id} value={batch.id}>
                {batch.name}
              </option>
            ))}
          </SelectField>
          {batchId === '' && (
            <div class="field-grid field-grid-five">
              {field('areaM2', 'Area', 'm²')}
              {field('spreadingM2PerL', 'A litre covers', 'm²')}
              {field('paint', 'Parts of paint', undefined, '35')}
              {field('rawLinseedOil', 'Parts of raw oil', undefined, '50')}
              {field('turpentine', 'Parts of turpentine', undefined, '15')}
            </div>
          )}
          <div class="field-grid field-grid-three">
            {field('potDiameter', 'Pot, inside width', 'cm', undefined, 'potDiameterMm')}
            {field('potTopDiameter', 'At the top, if wider', 'cm', undefined, 'potTopDiameterMm')}
            {field('potHeight', 'Inside height', 'cm', undefined, 'potHeightMm')}
          </div>
          <details class="more">
            <summary>What is in the tins, loss, density of the paint</summary>
            <div class="field-grid field-grid-five">
              {field('havePaintL', 'Paint there', 'L')}
              {field('haveRawLinseedOilL', 'Raw oil there', 'L')}
              {field('haveTurpentineL', 'Turpentine there', 'L')}
              {field('lossPercent', 'Lost in pot and brush', '%', '5')}
              {field('paintDensityKgPerL', 'Paint weighs', 'kg/L')}
            </div>
          </details>
          <button type="submit" class="button button-main" disabled={sending.busy}>
            Reckon
          </button>
        </div>
        <ProblemNote problem={sending.problem} />
      </form>
      {answer !== null && <PotAnswer query={answer.query} reply={answer.reply} />}
      <ShoppingPanel />
    </main>
  );
}
