import { ICalCalendar, ICalCalendarMethod } from 'ical-generator';
import type { Language } from '../contract/language.ts';
import type { AheadBatch, AheadStep, PlanAhead } from '../contract/plan-ahead.ts';
import type { Told } from '../contract/sentence.ts';
import { localTime } from '../rules/local-time.ts';
import { builtInName } from '../wording/built-in-name.ts';
import { sentence } from '../wording/english.ts';
import { inner, told } from '../wording/sentence.ts';
import type { Voice } from '../wording/voice.ts';

interface CalendarParts {
  site: string;
  timeZone: string;
  /** Name of a place; null where there is none. */
  placeName(placeId: string): string | null;
  /** Speaks the site’s language. */
  voice: Voice;
  language: Language;
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
  { site, timeZone, placeName, voice, language }: CalendarParts,
): string {
  const calendar = new ICalCalendar({
    name: voice(told('calendar-name', { site })),
    prodId: { company: 'boardcure', product: 'plan ahead', language: language.toUpperCase() },
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
      const { early, likely, late } = step.begins;
      entry(
        `${batch.batchId}-${batch.lot}-${step.kind}-${step.coat}`,
        dayOf(likely),
        voice(entrySentence(batch, step)),
        voice(told('calendar-when', { placeName: placeName(step.placeId), early, likely, late })),
      );
    }
  }
  for (const last of plan.lastStarts) {
    if (last.answer !== 'by' || last.at === null || last.batchId === null) continue;
    const name = plan.batches.find((batch) => batch.batchId === last.batchId)?.name ?? '';
    entry(
      `${last.batchId}-last-start-${last.coat}`,
      dayOf(last.at),
      voice(told('calendar-last-day', { what: inner(builtInName(last.name)), batchName: name })),
      voice(told('calendar-before-winter', { placeName: placeName(last.placeId) })),
    );
  }
  return calendar.toString();
}

function entrySentence({ name, boards, lot, lots }: AheadBatch, step: AheadStep): Told {
  const what =
    step.kind === 'coat' ? inner(builtInName(step.name)) : inner(sentence('calendar-put-up', {}));
  const shown = { what, batchName: name, boards };
  return lots > 1
    ? told('calendar-entry/part', { ...shown, part: lot + 1, parts: lots })
    : told('calendar-entry', shown);
}
