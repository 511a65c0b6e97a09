/* Sums of cure by place and hour, as kept. Every `at` is UTC epoch milliseconds. */

/** The cure that one UTC hour gave at a place, in hours at 20 °C. */
export interface HourSum {
  /** Whole hours since the epoch. */
  hour: number;
  low: number;
  high: number;
  /** The low sum with the temperature cut at the heat cap. */
  capped: number;
  /** Hours of this hour that lie between readings close enough together. */
  covered: number;
}

/** Whole hours that were reckoned and kept, both ends included. */
export interface HourRange {
  fromHour: number;
  toHour: number;
}

/** Hour sums that replace what was kept of a range; hours without a sum gathered nothing. */
export interface HourBlock extends HourRange {
  placeId: string;
  model: string;
  sums: HourSum[];
  /** True when nothing after the range is to be kept: the readings there are gone. */
  endsHere: boolean;
}

/** A stretch at a place whose hour sums no longer agree with its readings. */
export interface DirtySpan {
  rank: number;
  placeId: string;
  fromAt: number;
  toAt: number;
}
