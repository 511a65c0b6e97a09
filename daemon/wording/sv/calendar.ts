import type { Phrases } from '../phrase.ts';
import type { CalendarSentences } from '../subject/calendar.ts';

const place = (name: string | null) => name ?? 'en okänd plats';

export const calendar: Phrases<CalendarSentences> = {
  'calendar-name': ({ site }) => `Brädor i ${site}`,
  'calendar-put-up': () => 'Sätta upp',
  'calendar-entry': ({ what, batchName, boards }, _speak, say) =>
    `${say(what)}: ${batchName} (${boards} brädor)`,
  'calendar-entry/part': ({ what, batchName, boards, part, parts }, _speak, say) =>
    `${say(what)}: ${batchName} (${boards} brädor, del ${part} av ${parts})`,
  'calendar-when': ({ placeName, early, likely, late }, speak) => {
    const day = (moment: string | null) =>
      moment === null ? 'inte inom ett år' : speak.day(moment);
    return `På ${place(placeName)}. Tidigt ${day(early)}, troligen ${day(likely)}, sent ${day(late)}. Känn innan du går vidare.`;
  },
  'calendar-last-day': ({ what, batchName }, _speak, say) =>
    `Sista dag att börja: ${say(what)}, ${batchName}`,
  'calendar-before-winter': ({ placeName }) =>
    `Börjas det senare hinner det troligen inte härda före vintern på ${place(placeName)}.`,
  'compared-with': ({ others, from, to }, speak) =>
    `Jämförd i en sluten låda med ${others} andra, ${speak.moment(from)} till ${speak.moment(to)}.`,
};
