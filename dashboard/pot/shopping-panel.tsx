import { useState } from 'preact/hooks';
import type { ShoppingList } from '../../daemon/contract/mixture.ts';
import { plainList } from '../format/lists.ts';
import { TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { SentForm } from '../forms/sent-form.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { tinSizes, usualKeptPrimerL, usualTins } from './tin-sizes.ts';

/** An address has no room for more; whatever is longer is no list of tins, and the daemon says so. */
const MOST_TYPED = 200;

/** What to buy for every coat that is still to come. */
export function ShoppingPanel() {
  const { api } = useShed();
  const { words, units } = useReader();
  const { shopping, ask } = words.pot;
  const sending = useSending();
  const [list, setList] = useState<ShoppingList | null>(null);

  async function reckon(form: FormData): Promise<void> {
    const sizes = (name: string) => tinSizes(textOf(form, name).slice(0, MOST_TYPED), units);
    const reply = await sending.send(() =>
      api.call('shoppingList', {
        query: {
          lossPercent: optionalNumberOf(form, 'lossPercent') ?? undefined,
          keepPrimerL: optionalNumberOf(form, 'keepPrimerL') ?? undefined,
          paintTinsL: sizes('paintTinsL'),
          oilTinsL: sizes('oilTinsL'),
          turpentineTinsL: sizes('turpentineTinsL'),
        },
      }),
    );
    if (reply !== null) setList(reply);
  }

  const sizesField = (name: string, label: string, value: string) => (
    <TextField
      label={label}
      name={name}
      value={value}
      pointer={`/${name}`}
      problem={sending.problem}
      hint={shopping.sizesHint[units]}
    />
  );
  return (
    <section class="shopping" aria-labelledby="shopping-title">
      <h2 id="shopping-title">{shopping.title}</h2>
      <SentForm problem={sending.problem} busy={sending.busy} onSend={reckon}>
        <div class="field-grid field-grid-five">
          {sizesField('paintTinsL', shopping.paintTins, usualTins[units].paint)}
          {sizesField('oilTinsL', shopping.oilTins, usualTins[units].oil)}
          {sizesField('turpentineTinsL', shopping.turpentineTins, usualTins[units].turpentine)}
          <TextField
            label={ask.loss}
            name="lossPercent"
            kind="number"
            unit="%"
            value="5"
            pointer="/lossPercent"
            problem={sending.problem}
          />
          <MeasureField
            label={shopping.keepPrimer}
            name="keepPrimerL"
            measure="litres"
            value={String(usualKeptPrimerL[units])}
            pointer="/keepPrimerL"
            problem={sending.problem}
          />
        </div>
        <button type="submit" class="button">
          {shopping.makeList}
        </button>
      </SentForm>
      {list !== null && <Bought list={list} />}
    </section>
  );
}

function Bought({ list }: { list: ShoppingList }) {
  const { words, figures } = useReader();
  const { shopping } = words.pot;
  if (list.lines.length === 0) return <p>{shopping.nothing}</p>;
  return (
    <>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{shopping.what}</th>
            <th scope="col">{shopping.needed}</th>
            <th scope="col">{shopping.buy}</th>
          </tr>
        </thead>
        <tbody>
          {list.lines.map((line) => (
            <tr key={line.part}>
              <th scope="row">{words.things.ingredients[line.part]}</th>
              <td>{figures.volume(line.neededL, 1)}</td>
              <td>
                {line.tins === null
                  ? shopping.saySizes
                  : plainList(
                      line.tins.map(({ sizeL, count }) =>
                        shopping.tins(figures.number(count), figures.tin(sizeL)),
                      ),
                    )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="footnote">
        {shopping.foot(
          list.coats.length,
          figures.percent(list.lossPercent, 1),
          figures.tin(list.keepPrimerL),
        )}
      </p>
    </>
  );
}
