import type { Plan } from '../../daemon/contract/plan.ts';
import { figure } from '../format/figures.ts';
import { facesWords, mixtureWords, surfaceWords } from '../words/thing-words.ts';

/** The coating plans with their mixtures. */
export function PlanList({ plans }: { plans: readonly Plan[] }) {
  return (
    <ul class="plan-list">
      {plans.map((plan) => (
        <li key={plan.id} class="plan">
          <h3>
            {plan.name}
            <small>
              {surfaceWords[plan.surface].toLowerCase()}
              {plan.isDefault ? ', the usual one' : ''}
            </small>
          </h3>
          <ol>
            {plan.coats.map((coat) => (
              <li key={coat.name} class="plan-coat">
                <strong>{coat.name}</strong>: {mixtureWords(coat.mixture)}; {facesWords(coat.faces)}
                ; {figure(coat.spreadingM2PerL)} m²/L
              </li>
            ))}
          </ol>
        </li>
      ))}
    </ul>
  );
}
