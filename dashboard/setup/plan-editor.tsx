import { useState } from 'preact/hooks';
import type { Plan, PlannedCoat } from '../../daemon/contract/plan.ts';
import { jobsInOrder } from '../format/jobs-in-order.ts';
import { TextField } from '../forms/field.tsx';
import { MeasureField } from '../forms/measure-field.tsx';
import { numberOf, optionalNumberOf, textOf } from '../forms/typed.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

type Face = PlannedCoat['faces'][number];
const faces: readonly Face[] = ['face', 'back', 'edges', 'ends'];

interface PlanEditorProps {
  plan: Plan;
  onChanged: (plan: Plan) => void;
}

/** Changes a plan: the change is a new version, what is under way keeps the old one. */
export function PlanEditor({ plan, onChanged }: PlanEditorProps) {
  const { api } = useShed();
  const { words, figures } = useReader();
  const said = words.setup.plans;
  const nextVersion = figures.number(plan.version + 1);
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
      <p class="quiet">{isOwn ? said.staysBeside : said.newVersion(nextVersion)}</p>
      <label class="tick">
        <input
          type="checkbox"
          checked={isOwn}
          onChange={(event) => setOwn(event.currentTarget.checked)}
        />
        <span>{said.another}</span>
      </label>
      <TextField
        label={said.name}
        name="name"
        value={plan.name}
        pointer="/name"
        problem={problem}
      />
      {coats.map((coat, at) => (
        <fieldset key={at} class="plan-edit">
          <legend>{said.coatNumber(figures.number(at + 1))}</legend>
          <TextField
            label={said.name}
            name={`name-${at}`}
            value={coat.name}
            pointer={`/coats/${at}/name`}
            problem={problem}
          />
          <div class="field-grid field-grid-three">
            {(['paint', 'rawLinseedOil', 'turpentine'] as const).map((part) => (
              <TextField
                key={part}
                label={said.parts[part]}
                name={`${part}-${at}`}
                kind="number"
                unit={said.partsUnit}
                value={String(coat.mixture[part])}
                pointer={`/coats/${at}/mixture`}
                problem={problem}
              />
            ))}
          </div>
          <div class="field-grid">
            <MeasureField
              label={said.covers}
              name={`spreading-${at}`}
              measure="spreadingM2PerL"
              value={String(coat.spreadingM2PerL)}
              pointer={`/coats/${at}/spreadingM2PerL`}
              problem={problem}
            />
            <MeasureField
              label={said.coverWidth}
              name={`cover-${at}`}
              measure="lengthMm"
              value={coat.coverWidthMm ? String(coat.coverWidthMm) : ''}
              pointer={`/coats/${at}/coverWidthMm`}
              problem={problem}
            />
          </div>
          <p class="field-hint">{said.notBefore}</p>
          <div class="field-grid field-grid-three">
            {jobsInOrder.map((gate) => (
              <TextField
                key={gate}
                label={said.to(words.jobs[gate].noun)}
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
                <span>{words.things.faces[face]}</span>
              </label>
            ))}
            <label class="tick">
              <input type="checkbox" name={`soaks-${at}`} defaultChecked={coat.soaksIn} />
              <span>{said.sinksIn}</span>
            </label>
          </div>
        </fieldset>
      ))}
      <div class="action-row">
        {count < 10 && (
          <button type="button" class="button button-quiet" onClick={() => setCount(count + 1)}>
            {said.oneMore}
          </button>
        )}
        {count > 1 && (
          <button type="button" class="button button-quiet" onClick={() => setCount(count - 1)}>
            {said.oneLess}
          </button>
        )}
      </div>
      <button type="submit" class="button button-main">
        {isOwn ? said.makePlan : said.makeVersion(nextVersion)}
      </button>
    </WriteFrame>
  );
}

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
