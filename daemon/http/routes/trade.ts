import type { FastifyInstance } from 'fastify';
import { leadCaution } from '../../rules/timber-cautions.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** The question of the morning, and what the settings say of the trade. */
export function tradeRoutes(app: FastifyInstance, { view, now }: HttpParts): void {
  register(app, 'morningRound', () => view.morningRound(now()));

  register(app, 'trade', () => {
    const { stockSizes, stockLengthsMm, application, weatheredAfterDays } = view.trade.rules;
    const leadCautionSaid = leadCaution();
    return {
      stockSizes: [...stockSizes],
      stockLengthsMm: [...stockLengthsMm],
      application,
      weatheredAfterDays,
      leadCaution: leadCautionSaid.text,
      leadCautionSaid,
    };
  });
}
