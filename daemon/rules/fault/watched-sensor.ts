import type { Quantity } from '../../contract/quantity.ts';
import type { FaultKind } from '../../contract/sensor-fault.ts';
import { end, type Finding, type NamedFinding, nothingFound } from './finding.ts';
import { type Battery, newBattery } from './low-battery.ts';
import { findingsIn, newSeries, type SensorSeries } from './sensor-series.ts';
import { newSilence, type Silence } from './silent.ts';
import { newOwnTime, type OwnTime } from './time-wrong.ts';

/** What is remembered of a sensor: of a fixed size, however long its record is. */
export interface Watched {
  series: Map<Quantity, SensorSeries>;
  silence: Silence;
  ownTime: OwnTime;
  timeWrong: Finding;
  battery: Battery;
  lowBattery: Finding;
}

export const newWatched = (): Watched => ({
  series: new Map(),
  silence: newSilence(),
  ownTime: newOwnTime(),
  timeWrong: nothingFound(),
  battery: newBattery(),
  lowBattery: nothingFound(),
});

/** The series of a quantity, begun where there is none yet. */
export function seriesOf(one: Watched, quantity: Quantity): SensorSeries {
  let series = one.series.get(quantity);
  if (!series) {
    series = newSeries(quantity);
    one.series.set(quantity, series);
  }
  return series;
}

/** Whether a finding changed since this was asked last. */
export function settle(finding: Finding): boolean {
  const was = finding.stirred;
  finding.stirred = false;
  return was;
}

/** Whether anything found in a sensor changed since this was asked last. */
export function isStirred(one: Watched): boolean {
  let stirred = settle(one.silence) || settle(one.timeWrong) || settle(one.lowBattery);
  for (const series of one.series.values()) {
    for (const finding of findingsIn(series)) stirred = settle(finding) || stirred;
  }
  return stirred;
}

/** Everything that is said of a sensor. @param swapped - whether it changed places with another */
export function findingsOn(sensorKey: number, one: Watched, swapped: Finding): NamedFinding[] {
  const about = (
    kind: NamedFinding['kind'],
    quantity: Quantity | null,
    finding: Finding,
  ): NamedFinding => ({ sensorKey, quantity, kind, ...finding });
  const ofSeries = [...one.series.values()].flatMap((series) => {
    const { quantity } = series;
    // What left the others with a jump is called so; both end alike.
    const { jumps, drift, leftByJump } = series;
    const overAt = latest(jumps.overAt, drift.overAt);
    const jumped = {
      ...jumps,
      overAt,
      standing: jumps.standing ?? (leftByJump ? drift.standing : null),
    };
    const drifted = leftByJump ? { ...drift, standing: null } : drift;
    return [
      about('out-of-physics', quantity, series.outOfPhysics),
      about('stuck', quantity, series.stuck),
      about('pinned-humidity', quantity, series.pinnedHumidity),
      about('jumps', quantity, jumped),
      about('drift', quantity, drifted),
    ];
  });
  return [
    ...ofSeries,
    about('silent', null, one.silence),
    about('time-wrong', null, one.timeWrong),
    about('low-battery', 'battery', one.lowBattery),
    about('swapped-places', null, swapped),
  ];
}

/** What was found of one kind; undefined where that kind needs a quantity and none is given. */
export function findingOn(
  one: Watched,
  kind: Exclude<FaultKind, 'swapped-places'>,
  quantity: Quantity | null,
): Finding | undefined {
  const series = quantity === null ? null : seriesOf(one, quantity);
  return {
    silent: one.silence,
    'time-wrong': one.timeWrong,
    'low-battery': one.lowBattery,
    stuck: series?.stuck,
    jumps: series?.jumps,
    drift: series?.drift,
    'out-of-physics': series?.outOfPhysics,
    'pinned-humidity': series?.pinnedHumidity,
  }[kind];
}

/** Begins anew with all that compares a sensor with others. */
export function compareAnew(one: Watched): void {
  for (const series of one.series.values()) {
    const { bins, pinned, distance } = newSeries(series.quantity);
    Object.assign(series, { bins, pinned, distance, leftByJump: false });
    end(series.drift, series.lastAt);
    end(series.pinnedHumidity, series.lastAt);
  }
}

const latest = (a: number | null, b: number | null) =>
  a === null || b === null ? (a ?? b) : Math.max(a, b);
