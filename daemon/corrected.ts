import { correctedValue } from '../sensors/correct/corrected-value.ts';
import { aheadAllowedMs, flagsOf } from '../sensors/correct/reading-time.ts';
import type { Quantity } from './contract/quantity.ts';

/** The value to reckon with, of one that was sent. */
export const corrected = (quantity: Quantity, raw: number): number =>
  correctedValue(quantity, raw).value;

/** What is to be known about a reading's time, in words. */
export const flagWords = (flags: number): string => flagsOf(flags).join(' ');

/** Whether a time lies further ahead of the clock than a sensor's may run. */
export const isAhead = (at: number, now: number): boolean => at > now + aheadAllowedMs;
