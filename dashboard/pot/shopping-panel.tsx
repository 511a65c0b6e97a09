import { useState } from 'preact/hooks';
import type { ShoppingList } from '../../daemon/contract/mixture.ts';
import { TextField } from '../forms/field.tsx';
import { ProblemNote } from '../forms/problem-note.tsx';
import { optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';

/** What to buy for every coat that is still to come. */
export function ShoppingPanel() {
  const { api } = useShed();
  const sending = useSending();
  const [list, setList] = useState<ShoppingList | null>(null);

  async function reckon(form: FormData): Promise<void> {
    // A person writes “10; 5; 2,5”, the daemon reads “10,5,2.5”.
    const sizes = (name: string) =>
      textOf(form, name)
        .split(/[;\s]+/)
        .filter((size) => size !== '')
        .map((size) => size.replace(',', '.'))
        .join(',') || undefined;
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
      hint="in litres, with spaces between"
    />
  );
  return (
    <section class="shopping" aria-labelledby="shopping-title">
      <h2 id="shopping-title">What to buy for the whole job</h2>
      <form
        class="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void reckon(new FormData(event.currentTarget));
        }}
      >
        <div class="form-body">
          <div class="field-grid field-grid-five">
            {sizesField('paintTinsL', 'Tins of paint', '10 5 1')}
            {sizesField('oilTinsL', 'Cans of raw oil', '5 1')}
            {sizesField('turpentineTinsL', 'Cans of turpentine', '1')}
            <TextField
              label="Lost in pot and brush"
              name="lossPercent"
              kind="number"
              unit="%"
              value="5"
              pointer="/lossPercent"
              problem={sending.problem}
            />
            <TextField
              label="Primer kept for cut ends"
              name="keepPrimerL"
              kind="number"
              unit="L"
              value="1"
              pointer="/keepPrimerL"
              problem={sending.problem}
            />
          </div>
          <button type="submit" class="button" disabled={sending.busy}>
            Make the list
          </button>
        </div>
        <ProblemNote problem={sending.problem} />
      </form>
      {list !== null && <Bought list={list} />}
    </section>
  );
}

function Bought({ list }: { list: ShoppingList }) {
  if (list.lines.length === 0) return <p>No coat is still to come: there is nothing to buy.</p>;
  return (
    <>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Needed</th>
            <th scope="col">Buy</th>
          </tr>
        </thead>
        <tbody>
          {list.lines.map((line) => (
            <tr key={line.part}>
              <th scope="row">{line.words}</th>
              <td>{line.neededL.toFixed(1)} L</td>
              <td>
                {line.tins === null
                  ? 'say the sizes of tins'
                  : line.tins.map(({ sizeL, count }) => `${count} × ${sizeL} L`).join(', ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="footnote">
        For {list.coats.length} coat{list.coats.length === 1 ? '' : 's'} still to come, with{' '}
        {list.lossPercent} % lost and {list.keepPrimerL} L of primer kept for cut ends. Thinned
        paint does not keep for ever: buy what a season uses.
      </p>
    </>
  );
}
