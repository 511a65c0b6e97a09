import type { ComparedQuantity, Comparison } from '../../daemon/contract/comparison.ts';
import { quantityWords } from '../words/thing-words.ts';

/** What people call a sensor, by its id. */
export type Names = ReadonlyMap<string, string>;

/** What a comparison found, a table for each quantity. */
export function ComparisonTable({ comparison, names }: { comparison: Comparison; names: Names }) {
  if (comparison.quantities.length === 0) {
    return <p>Nothing that can be compared came from at least two of them in that time.</p>;
  }
  return (
    <>
      {comparison.quantities.map((compared) => (
        <Compared
          key={compared.quantity}
          compared={compared}
          offers={comparison.offers}
          names={names}
        />
      ))}
    </>
  );
}

const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`;

function Compared({
  compared,
  offers,
  names,
}: {
  compared: ComparedQuantity;
  offers: Comparison['offers'];
  names: Names;
}) {
  const { name, unit } = quantityWords[compared.quantity];
  return (
    <section class="compared" aria-label={name}>
      <h3>{name}</h3>
      <p>{compared.says}</p>
      {compared.sensors.length > 0 && (
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">Sensor</th>
              <th scope="col">Apart, {unit}</th>
              <th scope="col">Offered, {unit}</th>
            </tr>
          </thead>
          <tbody>
            {compared.sensors.map(({ sensor, difference, uncertainty, isOdd, wanders }) => {
              const offer = offers.find(
                (one) => one.sensor === sensor && one.quantity === compared.quantity,
              );
              return (
                <tr key={sensor} class={isOdd || wanders ? 'compared-odd' : ''}>
                  <th scope="row">
                    {names.get(sensor) ?? sensor}
                    {(isOdd || wanders) && <strong> odd one out</strong>}
                  </th>
                  <td>
                    {signed(difference)} ± {uncertainty.toFixed(2)}
                  </td>
                  <td>{offer ? signed(offer.change) : 'none'}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
    </section>
  );
}
