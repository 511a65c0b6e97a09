import type { MixtureReply } from '../../daemon/contract/mixture.ts';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { printAddress } from '../router.ts';
import { Said, SaidAll } from '../said.tsx';
import { type PotQuery, sheetQuery } from './pot-query.ts';

/** What goes into the pot: the marks on the stick first, then volumes and masses, then the rest. */
export function PotAnswer({ query, reply }: { query: PotQuery; reply: MixtureReply }) {
  const { words, figures } = useReader();
  const ownName = useOwnName();
  const { pot: said } = words;
  const volume = figures.volume(reply.totalL);
  const area = figures.asSet('areaM2', reply.areaM2, 1);
  return (
    <section class="pot-answer" aria-labelledby="pot-title" aria-live="polite">
      <h2 id="pot-title">
        {reply.coatName === null
          ? said.forArea(volume, area)
          : said.forCoat(ownName(reply.coatName), volume, area)}
      </h2>
      {reply.pot === null ? (
        <p>{said.sayWidth}</p>
      ) : (
        <StickMarks
          pot={reply.pot}
          sheet={sheetQuery({ ...query, coat: reply.coat ?? undefined })}
        />
      )}
      <Whole amounts={reply.amounts} />
      {reply.enough !== null && (
        <p class={reply.enough.word === 'no' ? 'pot-short' : ''}>
          {said.enough(
            <strong>{said.enoughQuestion}</strong>,
            <Said sentence={reply.enough.wordsSaid} />,
          )}
        </p>
      )}
      {reply.boardsPerLitre !== null && <BoardsEach boards={reply.boardsPerLitre} />}
      <ol class="pot-steps">
        {reply.stepsSaid.map((step) => (
          <li key={step.code + step.text}>
            <Said sentence={step} />
          </li>
        ))}
      </ol>
      <p class="footnote">
        <SaidAll sentences={reply.keepingSaid} />
      </p>
    </section>
  );
}

interface StickMarksProps {
  pot: NonNullable<MixtureReply['pot']>;
  sheet: ReturnType<typeof sheetQuery>;
}

/** How far up the stick is wet after each part, to be read at arm’s length. */
function StickMarks({ pot, sheet }: StickMarksProps) {
  const { words, figures, units } = useReader();
  const { pot: said, things } = words;
  const holds = pot.holdsL === null ? null : figures.volume(pot.holdsL);
  return (
    <>
      <p class="lead">{said.pourUntil(pot.fills, figures.volume(pot.fillL), holds)}</p>
      <ol class="pot-marks">
        {pot.marks.map((mark) => (
          <li key={mark.part}>
            <span class={`pot-cm pot-cm-${units}`}>
              {figures.mark(mark.stickCm)}
              <small> {figures.unit('lengthCm')}</small>
            </span>
            <span class="pot-part">{things.ingredients[mark.part]}</span>
            <span class="quiet">
              {said.or(figures.poured(mark.litres), figures.weighed(mark.grams))}
            </span>
          </li>
        ))}
      </ol>
      <p class="action-row">
        <a class="button" href={printAddress('strip', sheet)}>
          {said.printStrip}
        </a>
        <a class="button" href={printAddress('label', sheet)}>
          {said.printLabel}
        </a>
      </p>
    </>
  );
}

/** Each part for the whole area. */
function Whole({ amounts }: Pick<MixtureReply, 'amounts'>) {
  const { words, figures, units } = useReader();
  const { pot, things } = words;
  const { whole } = pot;
  return (
    <table class="figures">
      <caption class="spoken">{whole.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{whole.inAll}</th>
          <th scope="col">{whole.volume[units]}</th>
          <th scope="col">{whole.mass[units]}</th>
          <th scope="col">{whole.density}</th>
        </tr>
      </thead>
      <tbody>
        {amounts.map((amount) => (
          <tr key={amount.part}>
            <th scope="row">{things.ingredients[amount.part]}</th>
            <td>{figures.volume(amount.litres)}</td>
            <td>{figures.weighed(amount.grams)}</td>
            <td>
              {whole.densityFrom(
                figures.asSet('densityKgPerL', amount.densityKgPerL),
                <span class="quiet">
                  (<Said sentence={amount.densityFromSaid} />)
                </span>,
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function BoardsEach({ boards }: { boards: NonNullable<MixtureReply['boardsPerLitre']> }) {
  const { words, figures, units } = useReader();
  const said = words.pot.boardsEach[units];
  const planned = figures.bare('perLitre', boards.planned);
  return (
    <p>
      {boards.soFar === null
        ? said.planned(planned)
        : said.soFar(planned, figures.bare('perLitre', boards.soFar))}
    </p>
  );
}
