import type { Nothing } from '../phrase.ts';

interface AirChanges {
  perHour: number;
  low: number;
  high: number;
}

interface LoneSensor {
  sensor: string;
  /** Whether somebody has said at what height it hangs. */
  heightKnown: boolean;
  colderK: number;
}

/** What is to be said of the air at a place, of its racks and of a wall. */
export interface AirSentences {
  'air-changes-few': AirChanges;
  'air-changes-enough': AirChanges;
  'air-moister-drying': { gramsPerM3: number };
  'air-stagnant': { gramsPerM3: number };
  'air-damp-long': { hours: number; rhPercent: number };
  'rack-colder': { differenceK: number };
  'air-cannot-tell/not-measured': Nothing;
  'air-cannot-tell/few': AirChanges;
  'air-cannot-tell/between': AirChanges;
  'air-cannot-tell/too-few-samples': Nothing;
  'air-cannot-tell/too-short': Nothing;
  'air-cannot-tell/flat': Nothing;
  'air-cannot-tell/does-not-fit': Nothing;
  'air-cannot-tell/too-uncertain': Nothing;
  'floor-near-dew': LoneSensor & { marginK: number; limitK: number };
  'floor-colder': LoneSensor;
  'floor-colder/nothing-gained': LoneSensor;
  'floor-colder/longer': LoneSensor & { longerPercent: number };
  /** `untilHour`: of the day at the site. */
  'wall-sun': { untilHour: number };
  'wall-shade': Nothing;
  'wall-shade/facing-unknown': Nothing;
  'wall-evening': Nothing;
  'wall-evening/late': Nothing;
  'wall-rain': Nothing;
  'rack-over-metres': { placeName: string; capacityM: number; lyingM: number };
  'rack-over-boards': { placeName: string; capacity: number; lying: number };
}
