import type { Inner, Nothing } from '../phrase.ts';

interface Boards {
  /** What is done: a coat by its name, or that boards are put up. */
  what: Inner;
  batchName: string;
  boards: number;
}

/** The plan ahead as a calendar, and the note of a calibration by comparison. */
export interface CalendarSentences {
  'calendar-name': { site: string };
  'calendar-put-up': Nothing;
  'calendar-entry': Boards;
  /** `part`: which part of a batch that is larger than the racks, from 1. */
  'calendar-entry/part': Boards & { part: number; parts: number };
  /** Moments, null beyond the calendar; `placeName`: null where the place is gone. */
  'calendar-when': {
    placeName: string | null;
    early: string | null;
    likely: string | null;
    late: string | null;
  };
  'calendar-last-day': { what: Inner; batchName: string };
  'calendar-before-winter': { placeName: string | null };
  'compared-with': { others: number; from: string; to: string };
}
