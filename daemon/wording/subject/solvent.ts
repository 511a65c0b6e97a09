/** What is to be said of the solvent of a fresh coat. */
export interface SolventSentences {
  'solvent-leaves': { litres: number };
  'solvent-estimate': {
    volumeM3: number;
    perHour: number;
    /** False where nobody knows how often the air is changed: then a closed-up room is taken. */
    perHourKnown: boolean;
    nowPpm: number;
    peakPpm: number;
    limitPpm: number;
    /** True where the limit was set here; else it is the lowest published one. */
    limitIsLocal: boolean;
  };
  'solvent-air-needed': { perHour: number };
  /** `percent`: of what can be set alight. */
  'solvent-explosive': { percent: number };
}
