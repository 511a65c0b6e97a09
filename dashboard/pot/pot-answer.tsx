import type { MixtureReply } from '../../daemon/contract/mixture.ts';
import { figure } from '../format/figures.ts';
import { printAddress } from '../router.ts';
import { type PotQuery, sheetQuery } from './pot-query.ts';

const litres = (value: number) => `${value.toFixed(2)} L`;
const one = (value: number) => value.toFixed(1);

/** What goes into the pot: centimetres on the stick first, then litres and grams, then the rest. */
export function PotAnswer({ query, reply }: { query: PotQuery; reply: MixtureReply }) {
  const { pot, amounts } = reply;
  const sheet = sheetQuery(query);
  return (
    <section class="pot-answer" aria-labelledby="pot-title" aria-live="polite">
      <h2 id="pot-title">
        {reply.coatName === null ? '' : `${reply.coatName}: `}
        {litres(reply.totalL)} for {figure(Math.round(reply.areaM2 * 10) / 10)} m²
      </h2>
      {pot === null ? (
        <p>Say how wide the pot is, and the centimetres on the stick stand here.</p>
      ) : (
        <>
          <p class="lead">
            {pot.fills === 1 ? 'One pot' : `${pot.fills} pots, all alike,`} of {litres(pot.fillL)}
            {pot.holdsL !== null && `; it holds ${litres(pot.holdsL)}`}. Pour until the stick is wet
            up to
          </p>
          <ol class="pot-marks">
            {pot.marks.map((mark) => (
              <li key={mark.part}>
                <span class="pot-cm">
                  {one(mark.stickCm)}
                  <small> cm</small>
                </span>
                <span class="pot-part">{mark.words}</span>
                <span class="quiet">
                  {mark.millilitres} mL or {mark.grams} g
                </span>
              </li>
            ))}
          </ol>
          <p class="action-row">
            <a class="button" href={printAddress('strip', sheet)}>
              Print the strip
            </a>
            <a class="button" href={printAddress('label', sheet)}>
              Print the label
            </a>
          </p>
        </>
      )}
      <table class="figures">
        <caption class="spoken">The whole of it</caption>
        <thead>
          <tr>
            <th scope="col">In all</th>
            <th scope="col">Litres</th>
            <th scope="col">Grams</th>
            <th scope="col">Density</th>
          </tr>
        </thead>
        <tbody>
          {amounts.map((amount) => (
            <tr key={amount.part}>
              <th scope="row">{amount.words}</th>
              <td>{litres(amount.litres)}</td>
              <td>{amount.grams} g</td>
              <td>
                {amount.densityKgPerL} kg/L <span class="quiet">({amount.densityFrom})</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {reply.enough !== null && (
        <p class={reply.enough.word === 'no' ? 'pot-short' : ''}>
          <strong>Enough in the tins? </strong>
          {reply.enough.words}
        </p>
      )}
      {reply.boardsPerLitre !== null && (
        <p>
          Boards a litre: {one(reply.boardsPerLitre.planned)} by the plan,{' '}
          {reply.boardsPerLitre.soFar === null
            ? 'none recorded yet.'
            : `${one(reply.boardsPerLitre.soFar)} so far.`}
        </p>
      )}
      <ol class="pot-steps">
        {reply.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p class="footnote">{reply.keeping}</p>
    </section>
  );
}
