import { trade } from './en/trade.ts';

export const stateBeforeWords = trade.stateBefore;
export const storedWords = trade.stored;
export const supportWords = trade.support;
export const knotsWords = trade.knots;
export const tinKindWords = trade.tins;
export const driersWords = trade.driers;
