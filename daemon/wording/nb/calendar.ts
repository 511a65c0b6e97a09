import type { Phrases } from '../phrase.ts';
import type { CalendarSentences } from '../subject/calendar.ts';

const place = (name: string | null) => name ?? 'et ukjent sted';

export const calendar: Phrases<CalendarSentences> = {
  'calendar-name': ({ site }) => `Bord: ${site}`,
  'calendar-put-up': () => 'Sette opp',
  'calendar-entry': ({ what, batchName, boards }, _speak, say) =>
    `${say(what)}: ${batchName} (${boards} bord)`,
  'calendar-entry/part': ({ what, batchName, boards, part, parts }, _speak, say) =>
    `${say(what)}: ${batchName} (${boards} bord, del ${part} av ${parts})`,
  'calendar-when': ({ placeName, early, likely, late }, speak) => {
    const day = (moment: string | null) =>
      moment === null ? 'ikke innen et år' : speak.day(moment);
    return `På ${place(placeName)}. Tidlig ${day(early)}, trolig ${day(likely)}, sent ${day(late)}. Kjenn på det før du går videre.`;
  },
  'calendar-last-day': ({ what, batchName }, _speak, say) =>
    `Siste dag å begynne: ${say(what)}, ${batchName}`,
  'calendar-before-winter': ({ placeName }) =>
    `Begynner du senere, herder det trolig ikke før vinteren på ${place(placeName)}.`,
  'compared-with': ({ others, from, to }, speak) =>
    `Sammenlignet i en lukket boks med ${others} andre, ${speak.moment(from)} til ${speak.moment(to)}.`,
};
