/** How far a coat has come, °C·h by the model that rules and by the one carried beside it. */
export interface CoatProgress {
  /** The ruling sum, gaps and heat above the cap adding nothing. */
  degreeHours: number;
  /** The sum as it stands, heat counted in full. */
  uncappedDegreeHours: number;
  /** The sum with every gap bridged. */
  degreeHoursHigh: number;
  /** The other model’s sum, in the same measure. */
  otherDegreeHours: number;
  coveredHours: number;
  gapHours: number;
  /** Newest reading at the place; null without any. */
  lastReadingAt: number | null;
}
