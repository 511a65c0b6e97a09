import type { Phrases } from '../phrase.ts';
import type { CalendarSentences } from '../subject/calendar.ts';

const place = (name: string | null) => name ?? 'an unknown place';

export const calendar: Phrases<CalendarSentences> = {
  'calendar-name': ({ site }) => `Boards at ${site}`,
  'calendar-put-up': () => 'Put up',
  'calendar-entry': ({ what, batchName, boards }, _speak, say) =>
    `${say(what)}: ${batchName} (${boards} boards)`,
  'calendar-entry/part': ({ what, batchName, boards, part, parts }, _speak, say) =>
    `${say(what)}: ${batchName} (${boards} boards, part ${part} of ${parts})`,
  'calendar-when': ({ placeName, early, likely, late }, speak) => {
    const day = (moment: string | null) =>
      moment === null ? 'not within the year' : speak.day(moment);
    return `At ${place(placeName)}. Early ${day(early)}, likely ${day(likely)}, late ${day(late)}. Feel it before you go on.`;
  },
  'calendar-last-day': ({ what, batchName }, _speak, say) =>
    `Last day to begin: ${say(what)}, ${batchName}`,
  'calendar-before-winter': ({ placeName }) =>
    `Begun later it is not likely to cure before winter at ${place(placeName)}.`,
  'compared-with': ({ others, from, to }, speak) =>
    `Compared in a closed box with ${others} others, ${speak.moment(from)} to ${speak.moment(to)}.`,
};
