import { useCallback } from 'preact/hooks';
import type { Conditions, ReportCoat } from '../../daemon/contract/report.ts';
import { logEntries } from '../batch/log-entries.ts';
import { degreeHoursFigure, figure } from '../format/figures.ts';
import { timberLine } from '../format/timber.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { jobs, jobsInOrder } from '../words/job-words.ts';
import { facesWords, mixtureWords, speciesWords, surfaceWords } from '../words/thing-words.ts';

/** All of one batch on paper: what it is, what it got, in which air, and what was felt. */
export function ReportPage({ id }: { id: string }) {
  const { api, calendar } = useShed();
  const reader = useReader();
  const { replied } = useReply(
    useCallback(() => api.call('batchReport', { params: { id } }), [api, id]),
  );
  if (replied.kind === 'loading') return <main class="page" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>No report</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const report = replied.reply;
  const { batch } = report;
  const place = (placeId: string) => report.placeNames[placeId] ?? 'another place';
  const timber = timberLine(batch.timber, reader.calendar, reader.words.trade, reader.locale);
  const day = (moment: string) => calendar.exact(Date.parse(moment));
  return (
    <main class="page report">
      <p class="report-head">
        {report.site}, report made {day(report.madeAt)}
      </p>
      <h1>{batch.name}</h1>
      <p class="lead">
        {batch.boards.count} boards, {figure(batch.boards.lengthMm)} × {batch.boards.widthMm} ×{' '}
        {batch.boards.thicknessMm} mm, {speciesWords[batch.species]},{' '}
        {surfaceWords[batch.surface].toLowerCase()}; {batch.plan.name}.
      </p>
      {timber !== '' && <p class="quiet">{timber}</p>}
      <p class="report-actions">
        <button type="button" class="button" onClick={() => print()}>
          Print
        </button>
        <a href={`/api/v1/batches/${batch.id}/report.csv`}>As a table (CSV)</a>
        <a href={`/api/v1/batches/${batch.id}/report`}>As JSON</a>
        <a href={batchAddress(batch.id)}>Back to the batch</a>
      </p>
      {batch.coats.map((coat) => {
        const figures = report.coats.find((one) => one.coatId === coat.id);
        return (
          <section key={coat.id} class="report-coat" aria-labelledby={`coat-${coat.id}`}>
            <h2 id={`coat-${coat.id}`}>{coat.name}</h2>
            <p>
              Finished {day(coat.finishedAt)}; {mixtureWords(coat.mixture)};{' '}
              {facesWords(coat.faces)}
              {coat.colour === null ? '' : `; ${coat.colour}`}
              {coat.tin === null ? '' : `, tin ${coat.tin}`}.
            </p>
            {figures && <CoatFigures figures={figures} usedL={coat.usedL} sum={coat.degreeHours} />}
          </section>
        );
      })}
      {batch.coats.length === 0 && <p class="quiet">No coat was recorded.</p>}
      <section aria-labelledby="report-log">
        <h2 id="report-log">What was recorded</h2>
        <table class="figures">
          <tbody>
            {logEntries(batch, place, reader).map((entry) => (
              <tr key={entry.id}>
                <th scope="row">{calendar.exact(entry.at)}</th>
                <td>{entry.what}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {report.photos.length > 0 && (
        <section aria-labelledby="report-photos">
          <h2 id="report-photos">Photos</h2>
          <ul class="photos">
            {report.photos.map((photo) => (
              <li key={photo.id}>
                <img src={photo.address} alt={photo.text ?? `Photo of ${day(photo.at)}`} />
                <p>
                  {day(photo.at)}
                  {photo.text === null ? '' : `: ${photo.text}`}
                </p>
              </li>
            ))}
          </ul>
        </section>
      )}
    </main>
  );
}

interface CoatFiguresProps {
  figures: ReportCoat;
  usedL: number | null;
  sum: number;
}

function CoatFigures({ figures, usedL, sum }: CoatFiguresProps) {
  const { calendar } = useShed();
  const reached = jobsInOrder.flatMap((gate) => {
    const at = figures.reached[gate];
    return at ? [`${jobs[gate].noun} ${calendar.exact(Date.parse(at))}`] : [];
  });
  return (
    <>
      <p>
        {figure(toThree(figures.areaM2))} m²
        {usedL === null ? '' : `, ${figure(usedL)} L`}
        {figures.spreadingM2PerL === null
          ? ''
          : `: ${figure(toThree(figures.spreadingM2PerL))} m²/L`}
        ; {degreeHoursFigure(sum)} gathered.
      </p>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Air</th>
            <th scope="col">Temperature, lowest / mean / highest</th>
            <th scope="col">Humidity</th>
            <th scope="col">Cold, damp, near dew</th>
          </tr>
        </thead>
        <tbody>
          <AirRow when="At the brush" air={figures.atTheBrush} />
          <AirRow when="First day" air={figures.firstDay} />
          <AirRow when="While curing" air={figures.whileCuring} />
        </tbody>
      </table>
      <p class="footnote">
        As likely as not possible by the model:{' '}
        {reached.length === 0 ? 'nothing yet' : reached.join('; ')}. Cold is below 5 °C, damp above
        85 %, near dew less than 3 K above the dew point.
      </p>
    </>
  );
}

/** To three digits: more are not known. */
const toThree = (value: number) => Number(value.toPrecision(3));

function AirRow({ when, air }: { when: string; air: Conditions }) {
  const three = (spread: Conditions['tempC'], digits: number) =>
    spread === null
      ? 'not read'
      : [spread.lowest, spread.mean, spread.highest]
          .map((value) => value.toFixed(digits))
          .join(' / ');
  return (
    <tr>
      <th scope="row">{when}</th>
      <td>
        {three(air.tempC, 1)}
        {air.tempC === null ? '' : ' °C'}
      </td>
      <td>
        {three(air.rhPercent, 0)}
        {air.rhPercent === null ? '' : ' %'}
      </td>
      <td>
        {air.coldHours} h, {air.dampHours} h, {air.nearDewHours} h of {air.hours} h
      </td>
    </tr>
  );
}
