import { useState } from 'preact/hooks';
import type { MixtureReply } from '../../daemon/contract/mixture.ts';
import type { Measure } from '../format/units.ts';
import { SelectField, TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { SentForm } from '../forms/sent-form.tsx';
import { optionalNumberOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { PotAnswer } from './pot-answer.tsx';
import type { PotQuery } from './pot-query.ts';
import { ShoppingPanel } from './shopping-panel.tsx';

/** The mixing bench: what goes into the pot at hand, in figures that are read at arm’s length. */
export function PotPage() {
  const { api, live } = useShed();
  const { ask, title } = useReader().words.pot;
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

  const plain = (name: string, label: string, value: string, unit?: string) => (
    <TextField
      {...{ label, name, value }}
      kind="number"
      pointer={`/${name}`}
      problem={sending.problem}
      {...(unit === undefined ? {} : { unit })}
    />
  );
  const measured = (name: string, label: string, measure: Measure, pointer = name) => (
    <MeasureField {...{ label, name, measure }} pointer={`/${pointer}`} problem={sending.problem} />
  );
  return (
    <main class="page pot">
      <h1>{title}</h1>
      <SentForm problem={sending.problem} busy={sending.busy} onSend={reckon}>
        <SelectField
          label={ask.which}
          name="batchId"
          value={batchId}
          onChange={setBatchId}
          pointer="/batchId"
          problem={sending.problem}
          hint={ask.whichHint}
        >
          <option value="">{ask.ownArea}</option>
          {batches.map((batch) => (
            <option key={batch.id} value={batch.id}>
              {batch.name}
            </option>
          ))}
        </SelectField>
        {batchId === '' && (
          <div class="field-grid field-grid-five">
            {measured('areaM2', ask.area, 'areaM2')}
            {measured('spreadingM2PerL', ask.spreading, 'spreadingM2PerL')}
            {plain('paint', ask.parts.paint, '35')}
            {plain('rawLinseedOil', ask.parts.rawLinseedOil, '50')}
            {plain('turpentine', ask.parts.turpentine, '15')}
          </div>
        )}
        <div class="field-grid field-grid-three">
          {measured('potDiameter', ask.width, 'lengthCm', 'potDiameterMm')}
          {measured('potTopDiameter', ask.topWidth, 'lengthCm', 'potTopDiameterMm')}
          {measured('potHeight', ask.height, 'lengthCm', 'potHeightMm')}
        </div>
        <details class="more">
          <summary>{ask.more}</summary>
          <div class="field-grid field-grid-five">
            {measured('havePaintL', ask.inTins.paint, 'litres')}
            {measured('haveRawLinseedOilL', ask.inTins.rawLinseedOil, 'litres')}
            {measured('haveTurpentineL', ask.inTins.turpentine, 'litres')}
            {plain('lossPercent', ask.loss, '5', '%')}
            {measured('paintDensityKgPerL', ask.weighs, 'densityKgPerL')}
          </div>
        </details>
        <button type="submit" class="button button-main">
          {ask.reckon}
        </button>
      </SentForm>
      {answer !== null && <PotAnswer query={answer.query} reply={answer.reply} />}
      <ShoppingPanel />
    </main>
  );
}
