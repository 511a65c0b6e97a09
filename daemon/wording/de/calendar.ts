import type { Phrases } from '../phrase.ts';
import type { CalendarSentences } from '../subject/calendar.ts';

const place = (name: string | null) => name ?? 'unbekannt';

export const calendar: Phrases<CalendarSentences> = {
  'calendar-name': ({ site }) => `Bretter: ${site}`,
  'calendar-put-up': () => 'Anbringen',
  'calendar-entry': ({ what, batchName, boards }, _speak, say) =>
    `${say(what)}: ${batchName} (Bretter: ${boards})`,
  'calendar-entry/part': ({ what, batchName, boards, part, parts }, _speak, say) =>
    `${say(what)}: ${batchName} (Bretter: ${boards}, Teil ${part} von ${parts})`,
  'calendar-when': ({ placeName, early, likely, late }, speak) => {
    const day = (moment: string | null) =>
      moment === null ? 'nicht binnen eines Jahres' : speak.day(moment);
    return `Platz: ${place(placeName)}. Früh ${day(early)}, wahrscheinlich ${day(likely)}, spät ${day(late)}. Vor dem Weitermachen anfassen.`;
  },
  'calendar-last-day': ({ what, batchName }, _speak, say) =>
    `Letzter Tag zum Anfangen: ${say(what)}, ${batchName}`,
  'calendar-before-winter': ({ placeName }) =>
    `Später begonnen, härtet es wahrscheinlich nicht mehr vor dem Winter (${place(placeName)}).`,
  'compared-with': ({ others, from, to }, speak) =>
    `In einer geschlossenen Kiste verglichen, weitere Sensoren: ${others}, ${speak.moment(from)} bis ${speak.moment(to)}.`,
};
