import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coat } from '../../daemon/contract/coat.ts';
import { facesLine, mixtureLine, plainList } from '../format/lists.ts';
import type { Figures } from '../format/reader-figures.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { mayTry } from '../forms/write-frame.tsx';
import { useOwnName } from '../own-name.ts';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import type { Words } from '../words/words.ts';

interface CoatListProps {
  batch: Batch;
  onChanged: () => void;
}

/** Every coat with its sums, so that anyone can check them. */
export function CoatList({ batch, onChanged }: CoatListProps) {
  const { coats } = useReader().words.batch;
  if (batch.coats.length === 0) return null;
  return (
    <section class="coats" aria-labelledby="coats-title">
      <h2 id="coats-title">{coats.title}</h2>
      <ol class="coat-list">
        {batch.coats.map((coat) => (
          <CoatEntry key={coat.id} coat={coat} batch={batch} onChanged={onChanged} />
        ))}
      </ol>
    </section>
  );
}

function CoatEntry({ coat, batch, onChanged }: CoatListProps & { coat: Coat }) {
  const { words, figures, locale } = useReader();
  const ownName = useOwnName();
  const { coats } = words.batch;
  const paint = [
    mixtureLine(coat.mixture, words.things),
    facesLine(coat.faces, words.things, locale),
    coat.usedL === null ? null : coats.used(figures.measure('litres', coat.usedL)),
    coat.colour,
    coat.tin === null ? null : coats.tin(coat.tin),
  ].filter((part) => part !== null);
  const { degreeHours, hours } = figures;
  const spread = (low: string, high: string) => (low === high ? low : coats.range(low, high));
  return (
    <li class="coat">
      <h3>
        {coats.name(
          figures.number(coat.coat + 1),
          figures.number(batch.plan.coats.length),
          ownName(coat.name),
        )}
      </h3>
      <p>{plainList(paint)}</p>
      <dl class="figures">
        <Figure
          name={coats.lastBoard}
          value={<PaintersMoment at={Date.parse(coat.finishedAt)} />}
        />
        <Figure name={coats.stage} value={words.stages[coat.stage]} />
        <Figure name={coats.sum} value={degreeHours(coat.degreeHours)} />
        <Figure
          name={coats.lowToHigh}
          value={spread(degreeHours(coat.degreeHoursLow), degreeHours(coat.degreeHoursHigh))}
        />
        <Figure
          name={coats.hoursAt(figures.measure('tempC', 20, 0))}
          value={hours(coat.equivalentHours)}
        />
        <Figure name={coats.arrhenius} value={hours(coat.arrheniusEquivalentHours)} />
        <Figure name={coats.measured} value={hours(coat.coveredHours)} />
        <Figure name={coats.gaps} value={hours(coat.gapHours)} />
        <Figure name={coats.needs} value={degreeHours(coat.requiredDegreeHours)} />
        <Figure name={coats.model} value={modelLine(coat.model, coats, figures)} />
      </dl>
      <TakeBack coat={coat} batch={batch} onChanged={onChanged} />
    </li>
  );
}

function modelLine(
  { rate, datumC, maxGapHours }: Coat['model'],
  { models }: Words['batch']['coats'],
  figures: Figures,
): string {
  const gap = figures.hours(maxGapHours);
  return rate === 'arrhenius'
    ? models.arrhenius(gap)
    : models['nurse-saul'](figures.temperature(datumC), gap);
}

function Figure({ name, value }: { name: string; value: ComponentChildren }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

function TakeBack({ coat, batch, onChanged }: CoatListProps & { coat: Coat }) {
  const { api, live } = useShed();
  const { actions, batch: batchWords } = useReader().words;
  const { coats } = batchWords;
  const sending = useSending();
  const [asked, setAsked] = useState(false);
  if (!mayTry(live.overview.value)) return null;

  async function takeBack(): Promise<void> {
    const changed = await sending.send(() =>
      api.call('removeCoat', { params: { id: batch.id, part: coat.id } }),
    );
    if (changed !== null) onChanged();
  }

  return (
    <div class="take-back">
      {asked ? (
        <>
          <span>{coats.byMistakeHow}</span>
          <button
            type="button"
            class="button"
            aria-disabled={sending.busy}
            onClick={() => void takeBack()}
          >
            {actions.takeBack}
          </button>
          <button type="button" class="button" onClick={() => setAsked(false)}>
            {coats.leave}
          </button>
        </>
      ) : (
        <button type="button" class="button button-quiet" onClick={() => setAsked(true)}>
          {coats.byMistake}
        </button>
      )}
      <ProblemNote problem={sending.problem} />
    </div>
  );
}
