import type { Shed } from '../../sensors/shed/shed.ts';

export type AirTruth = 'poor' | 'between' | 'good';
export type AirFlag = 'poor' | 'good' | 'cannot-tell';

/*
 * What poor air is, from the shed's own truth. The words are those of the daemon's own limits: the
 * room's air changed less than every other hour, boards in a pocket that is hardly renewed, or damp
 * for most of half a day. The pocket's figure is an assumption.
 */
const POOR_ROOM_PER_HOUR = 0.5;
const GOOD_ROOM_PER_HOUR = 1;
const POOR_RACK_PER_HOUR = 8;
const GOOD_RACK_PER_HOUR = 15;
const DAMP_PERCENT = 80;
const DAMP_SHARE = 0.8;
/** Looks in a day and in half of one; looked at every half hour. */
const DAY = 48;
const HALF_A_DAY = 24;

/** Follows the true air of a shed, so that what is said of it can be judged. */
export function airTruth(shed: Shed) {
  const changes: number[] = [];
  const renewals = new Map<string, number[]>();
  const damp = new Map<string, number[]>();
  const racks = shed.plan.racks.map(({ name }) => name);
  const keep = (list: number[], value: number, most: number) => {
    list.push(value);
    if (list.length > most) list.shift();
  };
  const mean = (list: readonly number[]) => list.reduce((a, b) => a + b, 0) / list.length;

  return {
    /** Called every half hour. */
    look(): void {
      keep(changes, shed.airChangesPerHour(), DAY);
      for (const rack of racks) {
        const { rhPercent, renewalsPerHour } = shed.rackTruth(rack);
        const renewed = renewals.get(rack) ?? [];
        renewals.set(rack, renewed);
        keep(renewed, renewalsPerHour, HALF_A_DAY);
        const wet = damp.get(rack) ?? [];
        damp.set(rack, wet);
        keep(wet, rhPercent > DAMP_PERCENT ? 1 : 0, HALF_A_DAY);
      }
    },
    /** The truth about a rack; null before a day has been seen, and for what is no rack. */
    at(rack: string): AirTruth | null {
      const renewed = renewals.get(rack);
      if (renewed === undefined || changes.length < DAY) return null;
      const isDamp = mean(damp.get(rack) ?? [0]) >= DAMP_SHARE;
      const room = mean(changes);
      if (isDamp || room < POOR_ROOM_PER_HOUR || mean(renewed) < POOR_RACK_PER_HOUR) return 'poor';
      return room >= GOOD_ROOM_PER_HOUR && mean(renewed) >= GOOD_RACK_PER_HOUR ? 'good' : 'between';
    },
  };
}
