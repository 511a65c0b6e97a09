import { useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Coat } from '../../daemon/contract/coat.ts';
import { degreeHoursFigure, figure, hoursFigure } from '../format/figures.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { mayTry } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { stageWords } from '../words/stage-words.ts';
import { facesWords, mixtureWords } from '../words/thing-words.ts';

interface CoatListProps {
  batch: Batch;
  onChanged: () => void;
}

/** Every coat with its sums, so that anyone can check them. */
export function CoatList({ batch, onChanged }: CoatListProps) {
  if (batch.coats.length === 0) return null;
  return (
    <section class="coats" aria-labelledby="coats-title">
      <h2 id="coats-title">Coats</h2>
      <ol class="coat-list">
        {batch.coats.map((coat) => (
          <CoatEntry key={coat.id} coat={coat} batch={batch} onChanged={onChanged} />
        ))}
      </ol>
    </section>
  );
}

function CoatEntry({ coat, batch, onChanged }: CoatListProps & { coat: Coat }) {
  const { calendar } = useShed();
  const paint = [
    mixtureWords(coat.mixture),
    facesWords(coat.faces),
    coat.usedL === null ? null : `${figure(coat.usedL)} L used`,
    coat.colour,
    coat.tin === null ? null : `tin ${coat.tin}`,
  ];
  return (
    <li class="coat">
      <h3>
        {coat.coat + 1} of {batch.plan.coats.length}: {coat.name}
      </h3>
      <p>{paint.filter((part) => part !== null).join('; ')}</p>
      <dl class="figures">
        <Figure name="Last board" value={calendar.exact(Date.parse(coat.finishedAt))} />
        <Figure name="Stage" value={stageWords[coat.stage]} />
        <Figure name="Sum" value={degreeHoursFigure(coat.degreeHours)} />
        <Figure
          name="Low to high"
          value={`${degreeHoursFigure(coat.degreeHoursLow)} to ${degreeHoursFigure(coat.degreeHoursHigh)}`}
        />
        <Figure name="At 20 °C" value={hoursFigure(coat.equivalentHours)} />
        <Figure name="By Arrhenius" value={hoursFigure(coat.arrheniusEquivalentHours)} />
        <Figure name="Measured" value={hoursFigure(coat.coveredHours)} />
        <Figure name="Without readings" value={hoursFigure(coat.gapHours)} />
        <Figure name="Recoat likely needs" value={degreeHoursFigure(coat.requiredDegreeHours)} />
        <Figure name="Model" value={modelLine(coat.model)} />
      </dl>
      <TakeBack coat={coat} batch={batch} onChanged={onChanged} />
    </li>
  );
}

const modelWords = { 'nurse-saul': 'temperature sum', arrhenius: 'Arrhenius' } as const;

function modelLine(model: Coat['model']): string {
  const datum = model.datumC === null ? '' : `, datum ${figure(model.datumC)} °C`;
  return `${modelWords[model.rate]}${datum}, gaps over ${figure(model.maxGapHours)} h not counted`;
}

function Figure({ name, value }: { name: string; value: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

function TakeBack({ coat, batch, onChanged }: CoatListProps & { coat: Coat }) {
  const { api, live } = useShed();
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
          <span>Recorded by mistake? It is kept, marked as taken back. </span>
          <button
            type="button"
            class="button"
            disabled={sending.busy}
            onClick={() => void takeBack()}
          >
            Take it back
          </button>
          <button type="button" class="button" onClick={() => setAsked(false)}>
            Leave it
          </button>
        </>
      ) : (
        <button type="button" class="button button-quiet" onClick={() => setAsked(true)}>
          Recorded by mistake
        </button>
      )}
      <ProblemNote problem={sending.problem} />
    </div>
  );
}
