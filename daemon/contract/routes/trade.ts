import { MorningRound } from '../morning-round.ts';
import type { Route } from '../route.ts';
import { Trade } from '../trade.ts';

export const tradeRoutes = {
  morningRound: {
    method: 'GET',
    path: '/api/v1/morning-round',
    summary: 'The one question worth asking today, at the rack where the answer changes most',
    status: 200,
    reply: MorningRound,
  },
  trade: {
    method: 'GET',
    path: '/api/v1/trade',
    summary: 'What the settings say of timber and of the limits at the brush',
    status: 200,
    reply: Trade,
  },
} as const satisfies Record<string, Route>;
