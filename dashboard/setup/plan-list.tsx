import { useState } from 'preact/hooks';
import type { Plan } from '../../daemon/contract/plan.ts';
import { facesLine, mixtureLine, plainList, withinSentence } from '../format/lists.ts';
import { closesOnEscape } from '../forms/escape.ts';
import { useOwnName } from '../own-name.ts';
import { type Reader, useReader } from '../reader.ts';
import { PlanEditor } from './plan-editor.tsx';

/** The coating plans with their mixtures; each can be changed, as a new version. */
export function PlanList({ plans, onChanged }: { plans: readonly Plan[]; onChanged: () => void }) {
  const reader = useReader();
  const ownName = useOwnName();
  const { words, figures, locale } = reader;
  const said = words.setup.plans;
  const [editing, setEditing] = useState<string | null>(null);
  return (
    <ul class="plan-list">
      {plans.map((plan) => (
        <li
          key={plan.familyId}
          class="plan"
          onKeyDown={
            editing === plan.id
              ? closesOnEscape(() => setEditing(null), `edit-${plan.id}`)
              : undefined
          }
        >
          <details>
            <summary>
              <h3>
                {ownName(plan.name)}
                <small>
                  {plainList([
                    withinSentence(words.things.surfaces[plan.surface], locale),
                    ...(plan.isDefault ? [said.usual] : []),
                    ...(plan.version > 1 ? [said.version(figures.number(plan.version))] : []),
                  ])}
                </small>
              </h3>
            </summary>
            <ol>
              {plan.coats.map((coat, at) => (
                <li key={coat.name} class="plan-coat">
                  {said.coat(
                    <strong>{ownName(coat.name)}</strong>,
                    mixtureLine(coat.mixture, words.things),
                    facesLine(coat.faces, words.things, locale),
                    rateLine(coat.spreadingM2PerL, plan.learned[at], reader),
                  )}
                </li>
              ))}
            </ol>
            <button
              type="button"
              id={`edit-${plan.id}`}
              class="button button-quiet"
              aria-expanded={editing === plan.id}
              onClick={() => setEditing(editing === plan.id ? null : plan.id)}
            >
              {said.change}
            </button>
            {editing === plan.id && (
              <PlanEditor
                plan={plan}
                onChanged={() => {
                  setEditing(null);
                  onChanged();
                }}
              />
            )}
          </details>
        </li>
      ))}
    </ul>
  );
}

/** “8 m²/L”, or “from 3 coats: 7.2 m²/L, planned 8”. */
function rateLine(
  planned: number,
  learned: Plan['learned'][number] | undefined,
  { words, figures }: Pick<Reader, 'words' | 'figures'>,
): string {
  const rate = (m2PerL: number) => figures.measure('spreadingM2PerL', m2PerL);
  if (!learned || learned.coats === 0) return rate(planned);
  return words.setup.plans.learned(learned.coats, rate(learned.m2PerL), rate(planned));
}
