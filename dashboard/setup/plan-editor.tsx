import { useState } from 'preact/hooks';
import type { Plan, PlannedCoat } from '../../daemon/contract/plan.ts';
import { TextField } from '../forms/field.tsx';
import { numberOf, optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { jobs, jobsInOrder } from '../words/job-words.ts';
import { faceWords } from '../words/thing-words.ts';

type Face = PlannedCoat['faces'][number];
const faces = Object.keys(faceWords) as Face[];

interface PlanEditorProps {
  plan: Plan;
  onChanged: (plan: Plan) => void;
}

/** Changes a plan: the change is a new version, what is under way keeps the old one. */
export function PlanEditor({ plan, onChanged }: PlanEditorProps) {
  const { api } = useShed();
  const sending = useSending();
  const [count, setCount] = useState(plan.coats.length);
  const [isOwn, setOwn] = useState(false);
  const { problem } = sending;
  const coats = Array.from(
    { length: count },
    (_, at) => plan.coats[at] ?? plan.coats[plan.coats.length - 1],
  ).filter((coat) => coat !== undefined);

  async function change(form: FormData): Promise<void> {
    const name = textOf(form, 'name');
    const planned = coats.map((coat, at) => coatOf(form, coat, at));
    const changed = await sending.send((id) =>
      isOwn
        ? api.call('createPlan', { body: { id, name, surface: plan.surface, coats: planned } })
        : api.call('createPlanVersion', {
            params: { id: plan.id },
            body: { id, name, coats: planned },
          }),
    );
    if (changed !== null) onChanged(changed);
  }

  return (
    <WriteFrame problem={problem} busy={sending.busy} onSend={change}>
      <p class="quiet">
        {isOwn
          ? 'This plan stays as it is; another one stands beside it, to be chosen for a batch.'
          : `Version ${plan.version + 1} will hold for new batches. Batches and coats keep theirs.`}
      </p>
      <label class="tick">
        <input
          type="checkbox"
          checked={isOwn}
          onChange={(event) => setOwn(event.currentTarget.checked)}
        />
        <span>Make another plan of it, under a name of its own</span>
      </label>
      <TextField label="Name" name="name" value={plan.name} pointer="/name" problem={problem} />
      {coats.map((coat, at) => (
        <fieldset key={at} class="plan-edit">
          <legend>Coat {at + 1}</legend>
          <TextField
            label="Name"
            name={`name-${at}`}
            value={coat.name}
            pointer={`/coats/${at}/name`}
            problem={problem}
          />
          <div class="field-grid field-grid-three">
            {(['paint', 'rawLinseedOil', 'turpentine'] as const).map((part) => (
              <TextField
                key={part}
                label={partWords[part]}
                name={`${part}-${at}`}
                kind="number"
                unit="parts"
                value={String(coat.mixture[part])}
                pointer={`/coats/${at}/mixture`}
                problem={problem}
              />
            ))}
          </div>
          <div class="field-grid">
            <TextField
              label="A litre covers"
              name={`spreading-${at}`}
              kind="number"
              unit="m²"
              value={String(coat.spreadingM2PerL)}
              pointer={`/coats/${at}/spreadingM2PerL`}
              problem={problem}
            />
            <TextField
              label="Cover width"
              name={`cover-${at}`}
              kind="number"
              unit="mm"
              value={coat.coverWidthMm ? String(coat.coverWidthMm) : ''}
              pointer={`/coats/${at}/coverWidthMm`}
              problem={problem}
            />
          </div>
          <p class="field-hint">Not before so many hours, where the paint maker’s sheet says so:</p>
          <div class="field-grid field-grid-three">
            {jobsInOrder.map((gate) => (
              <TextField
                key={gate}
                label={`To ${jobs[gate].noun}`}
                name={`hours-${gate}-${at}`}
                kind="number"
                unit="h"
                value={String(coat.gateLimits?.[gate]?.leastHours ?? '')}
                pointer={`/coats/${at}/gateLimits`}
                problem={problem}
              />
            ))}
          </div>
          <div class="faces">
            {faces.map((face) => (
              <label key={face} class="tick">
                <input
                  type="checkbox"
                  name={`face-${face}-${at}`}
                  defaultChecked={coat.faces.includes(face)}
                />
                <span>{faceWords[face]}</span>
              </label>
            ))}
            <label class="tick">
              <input type="checkbox" name={`soaks-${at}`} defaultChecked={coat.soaksIn} />
              <span>sinks in</span>
            </label>
          </div>
        </fieldset>
      ))}
      <div class="action-row">
        {count < 10 && (
          <button type="button" class="button button-quiet" onClick={() => setCount(count + 1)}>
            One coat more
          </button>
        )}
        {count > 1 && (
          <button type="button" class="button button-quiet" onClick={() => setCount(count - 1)}>
            One coat less
          </button>
        )}
      </div>
      <button type="submit" class="button button-main">
        {isOwn ? 'Make the plan' : `Make version ${plan.version + 1}`}
      </button>
    </WriteFrame>
  );
}

const partWords = { paint: 'Paint', rawLinseedOil: 'Raw linseed oil', turpentine: 'Turpentine' };

function coatOf(form: FormData, before: PlannedCoat, at: number): PlannedCoat {
  return {
    name: textOf(form, `name-${at}`),
    mixture: {
      paint: numberOf(form, `paint-${at}`),
      rawLinseedOil: numberOf(form, `rawLinseedOil-${at}`),
      turpentine: numberOf(form, `turpentine-${at}`),
    },
    faces: faces.filter((face) => form.has(`face-${face}-${at}`)),
    spreadingM2PerL: numberOf(form, `spreading-${at}`),
    soaksIn: form.has(`soaks-${at}`),
    coverWidthMm: optionalNumberOf(form, `cover-${at}`),
    gateLimits: Object.fromEntries(
      jobsInOrder.flatMap((gate) => {
        const leastHours = optionalNumberOf(form, `hours-${gate}-${at}`);
        const { leastHours: _, ...rest } = before.gateLimits?.[gate] ?? {};
        const limit = leastHours === null ? rest : { ...rest, leastHours };
        return Object.keys(limit).length === 0 ? [] : [[gate, limit]];
      }),
    ),
  };
}
