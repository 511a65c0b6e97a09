import type { SimulatedShed, Site } from '../contract/site.ts';

/* What the server needs to know of the site itself; handed over by main. */

/** The simulated shed that can be run beside this site. */
export interface SimulatedShedPort {
  state(): SimulatedShed;
  /**
   * Starts one; where one runs or is on its way already, that one is told.
   *
   * @param speed - times faster than life; null for the usual one
   * @throws BoardcureError when it cannot be started
   */
  start(speed: number | null): SimulatedShed;
  /** Settles once it is gone with all it made. */
  stop(): Promise<void>;
}

export interface OwnSitePort {
  /** The name on the pages; null for that of the topics. */
  name(): string | null;
  timeZoneFrom: Site['timeZoneFrom'];
  broker(): Site['broker'];
  addresses(): string[];
  simulated: SimulatedShedPort;
}
