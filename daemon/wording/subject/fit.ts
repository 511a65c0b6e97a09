import type { Place } from '../../contract/place.ts';
import type { Nothing } from '../phrase.ts';

interface Temperature {
  tempC: number;
  limitC: number;
}

interface ToMeasure {
  /** How many boards are to be measured, and how far from the end. */
  boards: number;
  fromEndCm: number;
}

/** From when on something comes that the brush is put down for, and how long before. */
interface Stop {
  at: number;
  tomorrow: boolean;
  leadHours: number;
}

/** What speaks for and against brushing, and when to stop. */
export interface FitSentences {
  'fit-good': Nothing;
  'fit-poor': Nothing;
  'fit-no': Nothing;
  'fit-cannot-tell': Nothing;
  'air-unknown/to-brush': Nothing;
  'humidity-unknown': Nothing;
  'humidity/too-damp': { rhPercent: number; limitPercent: number };
  'humidity/dry-enough': { rhPercent: number; limitPercent: number };
  'dew-margin/too-near': { marginK: number; limitK: number };
  'dew-margin/clear': { marginK: number; limitK: number };
  'temperature/too-cold': Temperature;
  'temperature/too-hot': Temperature;
  'temperature/very-slow': Temperature;
  'temperature/slow': Temperature;
  'temperature/warm': Temperature;
  'temperature/fine': { tempC: number; fromC: number; toC: number };
  sun: { facing: NonNullable<Place['facing']> };
  'night-unknown': Nothing;
  'night-cold': { lowC: number; errorK: number; limitC: number };
  'night-dew': { marginK: number; limitK: number };
  'night-damp': { rhPercent: number; limitPercent: number };
  night: { lowC: number; errorK: number };
  'moisture-unknown': ToMeasure;
  'moisture/too-wet': { worstPercent: number; limitPercent: number };
  'moisture/dry-enough': { measured: number; worstPercent: number; limitPercent: number };
  'moisture-old': ToMeasure & { days: number; worstPercent: number };
  'moisture-few': ToMeasure & { measured: number; worstPercent: number; limitPercent: number };
  'shelf-unknown': { lyingM: number };
  shelf: { freeM: number };
  'shelf/needed': { freeM: number; neededM: number };
  'shelf/short': { freeM: number; neededM: number };
  floor: Nothing;
  'rain-unknown': Nothing;
  'stop-dew': Stop;
  'stop-damp': Stop;
  'stop-cold': Stop;
  'stop-rain': Stop;
  'stop-hot': Stop;
  'stop-unknown': Nothing;
  'stop-none': { hours: number };
}
