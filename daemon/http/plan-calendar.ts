import { ICalCalendar, ICalCalendarMethod } from 'ical-generator';
import type { AheadBatch, AheadStep, PlanAhead, SpreadMoment } from '../contract/plan-ahead.ts';
import { localTime } from '../rules/local-time.ts';

interface CalendarParts {
  site: string;
  timeZone: string;
  /** Name of a place. */
  placeName(placeId: string): string;
}

const dayMs = 86_400_000;
/** How often a phone is asked to look again, s. */
const refreshS = 3600;

/**
 * The plan as a calendar that a phone follows: one whole-day entry for each coat and each mounting
 * on its likely day, and one for the last day to begin a coat before winter.
 *
 * **Source:** RFC 5545 (iCalendar); RFC 7986 section 5.7 (refresh interval).
 */
export function planCalendar(
  plan: PlanAhead,
  { site, timeZone, placeName }: CalendarParts,
): string {
  const calendar = new ICalCalendar({
    name: `Boards at ${site}`,
    prodId: { company: 'boardcure', product: 'plan ahead', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
    ttl: refreshS,
  });
  const stamp = new Date(plan.now);
  /** The local day of a moment, as the midnight that a date without a zone is written from. */
  const dayOf = (moment: string) =>
    new Date(`${localTime(Date.parse(moment), timeZone).day}T00:00:00Z`);
  const entry = (id: string, day: Date, summary: string, description: string) =>
    calendar.createEvent({
      id: `${id}@${site}.boardcure`,
      start: day,
      end: new Date(day.getTime() + dayMs),
      allDay: true,
      stamp,
      summary,
      description,
    });
  for (const batch of plan.batches) {
    if (batch.batchId === null) continue;
    for (const step of batch.steps) {
      if (step.begins.likely === null) continue;
      const what = step.kind === 'coat' ? step.name : 'Put up';
      entry(
        `${batch.batchId}-${batch.lot}-${step.kind}-${step.coat}`,
        dayOf(step.begins.likely),
        `${what}: ${batch.name} (${boardsOf(batch)})`,
        [
          `At ${placeName(step.placeId)}.`,
          rangeOf(step, timeZone),
          'Feel it before you go on.',
        ].join(' '),
      );
    }
  }
  for (const last of plan.lastStarts) {
    if (last.answer !== 'by' || last.at === null || last.batchId === null) continue;
    const name = plan.batches.find((batch) => batch.batchId === last.batchId)?.name ?? '';
    entry(
      `${last.batchId}-last-start-${last.coat}`,
      dayOf(last.at),
      `Last day to begin: ${last.name}, ${name}`,
      `Begun later it is not likely to cure before winter at ${placeName(last.placeId)}.`,
    );
  }
  return calendar.toString();
}

function boardsOf(batch: AheadBatch): string {
  const part = batch.lots > 1 ? `, part ${batch.lot + 1} of ${batch.lots}` : '';
  return `${batch.boards} boards${part}`;
}

function rangeOf({ begins }: AheadStep, timeZone: string): string {
  const day = (moment: SpreadMoment['early']) =>
    moment === null ? 'not within the year' : localTime(Date.parse(moment), timeZone).day;
  return `Early ${day(begins.early)}, likely ${day(begins.likely)}, late ${day(begins.late)}.`;
}
