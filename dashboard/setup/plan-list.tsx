import { useState } from 'preact/hooks';
import type { Plan } from '../../daemon/contract/plan.ts';
import { figure } from '../format/figures.ts';
import { facesWords, mixtureWords, surfaceWords } from '../words/thing-words.ts';
import { PlanEditor } from './plan-editor.tsx';

/** The coating plans with their mixtures; each can be changed, as a new version. */
export function PlanList({ plans, onChanged }: { plans: readonly Plan[]; onChanged: () => void }) {
  const [editing, setEditing] = useState<string | null>(null);
  return (
    <ul class="plan-list">
      {plans.map((plan) => (
        <li key={plan.familyId} class="plan">
          <h3>
            {plan.name}
            <small>
              {surfaceWords[plan.surface].toLowerCase()}
              {plan.isDefault ? ', the usual one' : ''}
              {plan.version > 1 ? `, version ${plan.version}` : ''}
            </small>
          </h3>
          <ol>
            {plan.coats.map((coat, at) => (
              <li key={coat.name} class="plan-coat">
                <strong>{coat.name}</strong>: {mixtureWords(coat.mixture)}; {facesWords(coat.faces)}
                ; {rateWords(coat.spreadingM2PerL, plan.learned[at])}
              </li>
            ))}
          </ol>
          <button
            type="button"
            class="button button-quiet"
            aria-expanded={editing === plan.id}
            onClick={() => setEditing(editing === plan.id ? null : plan.id)}
          >
            Change this plan
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
        </li>
      ))}
    </ul>
  );
}

/** “8 m²/L”, or “from 3 coats: 7.2 m²/L, planned 8”. */
function rateWords(planned: number, learned: Plan['learned'][number] | undefined): string {
  if (!learned || learned.coats === 0) return `${figure(planned)} m²/L`;
  const coats = `${learned.coats} coat${learned.coats === 1 ? '' : 's'}`;
  return `from ${coats}: ${figure(Math.round(learned.m2PerL * 10) / 10)} m²/L, planned ${figure(planned)}`;
}
