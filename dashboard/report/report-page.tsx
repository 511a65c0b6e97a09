import { useCallback } from 'preact/hooks';
import type { Conditions, ReportCoat } from '../../daemon/contract/report.ts';
import { logEntries } from '../batch/log-entries.ts';
import { jobsInOrder } from '../format/jobs-in-order.ts';
import { facesLine, mixtureLine, withinSentence } from '../format/lists.ts';
import { timberLine } from '../format/timber.ts';
import type { Measure } from '../format/units.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useOwnName } from '../own-name.ts';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** All of one batch on paper: what it is, what it got, in which air, and what was felt. */
export function ReportPage({ id }: { id: string }) {
  const { api } = useShed();
  const reader = useReader();
  const ownName = useOwnName();
  const { words, figures, calendar, locale } = reader;
  const { report: said, things } = words;
  const { replied } = useReply(
    useCallback(() => api.call('batchReport', { params: { id } }), [api, id]),
  );
  if (replied.kind === 'loading') return <main class="page" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>{said.none}</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const report = replied.reply;
  const { batch } = report;
  const { lengthMm, widthMm, thicknessMm } = batch.boards;
  const place = (placeId: string) => report.placeNames[placeId] ?? said.anotherPlace;
  const entries = logEntries(batch, place, reader);
  const timber = timberLine(batch.timber, calendar, words.trade);
  const exact = (moment: string) => calendar.exact(Date.parse(moment));
  const told = (moment: string) => <PaintersMoment at={Date.parse(moment)} />;
  return (
    <main class="page report">
      <p class="report-head">{said.madeAt(report.site, exact(report.madeAt))}</p>
      <h1>{batch.name}</h1>
      <p class="lead">
        {said.what(
          things.boards(batch.boards.count),
          figures.sizes('lengthMm', lengthMm, widthMm, thicknessMm),
          things.species[batch.species],
          withinSentence(things.surfaces[batch.surface], locale),
          ownName(batch.plan.name),
        )}
      </p>
      {timber !== '' && <p class="quiet">{timber}</p>}
      <p class="report-actions">
        <button type="button" class="button" onClick={() => print()}>
          {said.print}
        </button>
        <a href={`/api/v1/batches/${batch.id}/report.csv`}>{said.asTable}</a>
        <a href={`/api/v1/batches/${batch.id}/report`}>{said.asJson}</a>
        <a href={batchAddress(batch.id)}>{said.back}</a>
      </p>
      {batch.coats.map((coat) => {
        const air = report.coats.find((one) => one.coatId === coat.id);
        return (
          <section key={coat.id} class="report-coat" aria-labelledby={`coat-${coat.id}`}>
            <h2 id={`coat-${coat.id}`}>{ownName(coat.name)}</h2>
            <p>
              {said.finished(
                told(coat.finishedAt),
                mixtureLine(coat.mixture, things),
                facesLine(coat.faces, things, locale),
                coat.colour,
                coat.tin,
              )}
            </p>
            {air && <CoatFigures air={air} usedL={coat.usedL} sum={coat.degreeHours} />}
          </section>
        );
      })}
      {batch.coats.length === 0 && <p class="quiet">{said.noCoat}</p>}
      <section aria-labelledby="report-log">
        <h2 id="report-log">{said.recorded}</h2>
        {entries.length === 0 && <p class="quiet">{words.batch.log.nothing}</p>}
        <table class="figures">
          <tbody>
            {entries.map((entry) => (
              <tr key={entry.id}>
                <th scope="row">
                  <PaintersMoment at={entry.at} />
                </th>
                <td>{entry.what}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {report.photos.length > 0 && (
        <section aria-labelledby="report-photos">
          <h2 id="report-photos">{said.photos}</h2>
          <ul class="photos">
            {report.photos.map((photo) => (
              <li key={photo.id}>
                <img src={photo.address} alt={photo.text ?? said.photoOf(exact(photo.at))} />
                <p>
                  {photo.text === null ? told(photo.at) : said.photo(told(photo.at), photo.text)}
                </p>
              </li>
            ))}
          </ul>
        </section>
      )}
    </main>
  );
}

/** What counts as cold, damp and near dew in the contract. */
const limits = { coldC: 5, dampPercent: 85, nearDewK: 3 } as const;

interface CoatFiguresProps {
  air: ReportCoat;
  usedL: number | null;
  sum: number;
}

function CoatFigures({ air: coat, usedL, sum }: CoatFiguresProps) {
  const { words, figures } = useReader();
  const { report, jobs } = words;
  const { air } = report;
  const rough = (measure: Measure, value: number) =>
    `${figures.roughly(measure, value)} ${figures.unit(measure)}`;
  const reached = jobsInOrder.flatMap((gate) => {
    const at = coat.reached[gate];
    return at ? [report.jobAt(jobs[gate].noun, <PaintersMoment at={Date.parse(at)} />)] : [];
  });
  return (
    <>
      <p>
        {report.gathered(
          rough('areaM2', coat.areaM2),
          usedL === null ? null : figures.tin(usedL),
          coat.spreadingM2PerL === null ? null : rough('spreadingM2PerL', coat.spreadingM2PerL),
          figures.degreeHours(sum),
        )}
      </p>
      <table class="figures stacked">
        <thead>
          <tr>
            <th scope="col">{air.heading}</th>
            <th scope="col">{air.temperature}</th>
            <th scope="col">{air.humidity}</th>
            <th scope="col">{air.hours}</th>
          </tr>
        </thead>
        <tbody>
          <AirRow when={air.atTheBrush} air={coat.atTheBrush} />
          <AirRow when={air.firstDay} air={coat.firstDay} />
          <AirRow when={air.whileCuring} air={coat.whileCuring} />
        </tbody>
      </table>
      <p class="footnote">
        {report.possible(reached)}{' '}
        {air.limits(
          figures.asSet('tempC', limits.coldC),
          figures.humidity(limits.dampPercent),
          figures.asSet('differenceK', limits.nearDewK),
        )}
      </p>
    </>
  );
}

function AirRow({ when, air }: { when: string; air: Conditions }) {
  const { words, figures } = useReader();
  const said = words.report.air;
  const three = (spread: Conditions['tempC'], bare: (value: number) => string, unit: string) =>
    spread === null
      ? said.notRead
      : `${[spread.lowest, spread.mean, spread.highest].map(bare).join(' / ')} ${unit}`;
  const count = (hours: number) => figures.number(hours);
  return (
    <tr>
      <th scope="row">{when}</th>
      <td data-label={said.temperature}>
        {three(air.tempC, (value) => figures.bare('tempC', value), figures.unit('tempC'))}
      </td>
      <td data-label={said.humidity}>
        {three(air.rhPercent, (value) => figures.number(value, 0), '%')}
      </td>
      <td data-label={said.hours}>
        {said.counted(
          count(air.coldHours),
          count(air.dampHours),
          count(air.nearDewHours),
          count(air.hours),
        )}
      </td>
    </tr>
  );
}
