import type { ComparedQuantity, Comparison } from '../../daemon/contract/comparison.ts';
import { shift, spread, unitOfShift } from '../format/reading.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';

/** What people call a sensor, by its id. */
export type Names = ReadonlyMap<string, string>;

/** What a comparison found, a table for each quantity. */
export function ComparisonTable({ comparison, names }: { comparison: Comparison; names: Names }) {
  const words = useReader().words.trust.compare;
  if (comparison.quantities.length === 0) return <p>{words.nothing}</p>;
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

function Compared({
  compared,
  offers,
  names,
}: {
  compared: ComparedQuantity;
  offers: Comparison['offers'];
  names: Names;
}) {
  const reader = useReader();
  const { things, trust } = reader.words;
  const words = trust.compare;
  const { quantity } = compared;
  const name = things.quantities[quantity];
  const unit = unitOfShift(quantity, reader);
  return (
    <section class="compared" aria-label={name}>
      <h3>{name}</h3>
      <p>
        <Said sentence={compared.saysSaid} />
      </p>
      {compared.sensors.length > 0 && (
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">{words.sensor}</th>
              <th scope="col">{words.apart(unit)}</th>
              <th scope="col">{words.offered(unit)}</th>
            </tr>
          </thead>
          <tbody>
            {compared.sensors.map(({ sensor, difference, uncertainty, isOdd, wanders }) => {
              const offer = offers.find(
                (one) => one.sensor === sensor && one.quantity === quantity,
              );
              return (
                <tr key={sensor} class={isOdd || wanders ? 'compared-odd' : ''}>
                  <th scope="row">
                    {names.get(sensor) ?? sensor}
                    {(isOdd || wanders) && (
                      <>
                        {' '}
                        <strong>{words.oddOneOut}</strong>
                      </>
                    )}
                  </th>
                  <td>
                    {shift(quantity, difference, reader)} ± {spread(quantity, uncertainty, reader)}
                  </td>
                  <td>{offer ? shift(quantity, offer.change, reader) : words.noOffer}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
    </section>
  );
}
