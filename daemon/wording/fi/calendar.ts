import type { Phrases } from '../phrase.ts';
import type { CalendarSentences } from '../subject/calendar.ts';

const place = (name: string | null) => name ?? 'tuntematon';

/** How many boards, as a painter writes it: a single one stands in the nominative. */
const lot = (boards: number) => (boards === 1 ? '1 lauta' : `${boards} lautaa`);

export const calendar: Phrases<CalendarSentences> = {
  'calendar-name': ({ site }) => `Laudat: ${site}`,
  'calendar-put-up': () => 'Asennus',
  'calendar-entry': ({ what, batchName, boards }, _speak, say) =>
    `${say(what)}: ${batchName} (${lot(boards)})`,
  'calendar-entry/part': ({ what, batchName, boards, part, parts }, _speak, say) =>
    `${say(what)}: ${batchName} (${lot(boards)}, osa ${part}/${parts})`,
  'calendar-when': ({ placeName, early, likely, late }, speak) => {
    const day = (moment: string | null) =>
      moment === null ? 'ei vuoden kuluessa' : speak.day(moment);
    return `Paikka: ${place(placeName)}. Varhain ${day(early)}, todennäköisesti ${day(likely)}, myöhään ${day(late)}. Tunnustele ennen kuin jatkat.`;
  },
  'calendar-last-day': ({ what, batchName }, _speak, say) =>
    `Viimeinen päivä aloittaa: ${say(what)}, ${batchName}`,
  'calendar-before-winter': ({ placeName }) =>
    `Myöhemmin aloitettuna se ei todennäköisesti kovetu ennen talvea, paikka: ${place(placeName)}.`,
  'compared-with': ({ others, from, to }, speak) =>
    `Verrattu suljetussa laatikossa, muita antureita ${others}, ${speak.moment(from)} – ${speak.moment(to)}.`,
};
