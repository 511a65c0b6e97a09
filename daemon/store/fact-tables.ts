import type { BatchTable } from './batches.ts';
import type { ChangeTable } from './changes.ts';
import type { CoatingTable } from './coatings.ts';
import type { CoatTable } from './coats.ts';
import type { HourTable } from './hours.ts';
import type { LineageTable } from './lineage.ts';
import type { LockUpTable } from './lock-up.ts';
import type { NoticeTable } from './notices.ts';
import type { PlaceTable } from './places.ts';
import type { PlanTable } from './plans.ts';
import type { RemarkTable } from './remarks.ts';
import type { SensorTable } from './sensors.ts';
import type { SiteNameTable } from './site-name.ts';
import type { ReadingIntake } from './take-in-readings.ts';
import type { TinTable } from './tins.ts';

/** The tables that people’s edits are written to. */
export interface FactTables {
  places: PlaceTable;
  sensors: SensorTable;
  readings: ReadingIntake;
  hours: HourTable;
  plans: PlanTable;
  batches: BatchTable;
  coats: CoatTable;
  remarks: RemarkTable;
  notices: NoticeTable;
  lockUp: LockUpTable;
  lineage: LineageTable;
  tins: TinTable;
  coatings: CoatingTable;
  siteName: SiteNameTable;
  changes: ChangeTable;
}
