import type { Session } from '../../daemon/contract/access.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import type { Site } from '../../daemon/contract/site.ts';

/** What every screen is handed. */
export interface StepProps {
  overview: Overview;
  session: Session;
  site: Site;
  sensors: readonly Sensor[];
  /** Reads again what the daemon has. */
  again: () => Promise<void>;
  /** To the next screen. */
  goOn: () => void;
}
