import type { Phrases } from '../phrase.ts';
import type { HelpSentences } from '../subject/help.ts';

const heaterCaution =
  'Bara med en värmare utan låga och utan något som glöder, eller en vars avgaser går ut, på avstånd från brädor, trasor och ångor, enligt dess anvisningar och lokala regler. Aldrig öppen låga, glödande eller en värmare utan avgasrör.';

const dryTheAir =
  'avfukta luften, eller byt den medan det är torrare ute. Bara därav räknas det inte härda fortare.';

/** So many hours, from a day and a half on in days. */
const inHoursOrDays = (hours: number) =>
  hours < 36 ? `${Math.round(hours)} timmar` : `${Math.round(hours / 24)} dygn`;

export const help: Phrases<HelpSentences> = {
  'air-unknown/how-warm': () => 'Inget färskt mätvärde berättar hur varmt det är där.',
  'stands-still': ({ tempC }, speak) => `Vid ${speak.temperature(tempC)} härdar det knappt.`,
  cold: ({ tempC }, speak) => `Där är kallt: ${speak.temperature(tempC)}.`,
  damp: ({ rhPercent }, speak) => `Där är fuktigt: ${speak.humidity(rhPercent)}.`,
  'still-air': () => 'Luften där står stilla.',
  'failed-test/slow-coat': () =>
    'Den klarade inte ett känselprov, alltså är det en långsam strykning.',
  time: () => 'Inget är fel: oljan tar upp syre i sin egen takt.',
  'help-changed-air': () =>
    'Byt luft: öppna dörrar mitt emot varandra, lägg brädorna glesare. Stäng på kvällen när det blir fuktigare ute. Ingen fläkt rakt på våt färg.',
  'help-changed-air/wetter-outside': () =>
    'Byt luft när det är torrare ute än inne; nu är det fuktigare. Ge brädorna mer plats så länge. Ingen fläkt rakt på våt färg.',
  'help-drier': () => `Fuktig luft håller virket vått och färgen utsatt för dagg: ${dryTheAir}`,
  'help-drier/near-dew': ({ marginK }, speak) =>
    `Inom ett dygn kommer brädorna inom ${speak.temperatureDifference(marginK)} från daggpunkten: ${dryTheAir}`,
  'help-warmer-later': () =>
    'Värme skulle hjälpa, men inte under det första dygnet efter en strykning med terpentin: släpp ut ångorna först, utan värmare och utan gnistor i närheten.',
  'help-warmer': ({ toTempC, soonerHours }, speak) =>
    `Hållet vid ${speak.temperature(toTempC, 0)}: omkring ${inHoursOrDays(soonerHours)} tidigare. ${heaterCaution}`,
  'help-warmer/at-all': ({ toTempC }, speak) =>
    `Hållet vid ${speak.temperature(toTempC, 0)}: då skulle det härda över huvud taget. ${heaterCaution}`,
  'help-touch': () => 'Känn på det: ett känselprov säger nu mer än någon räkning.',
  'help-only-time': () => 'Bara tid hjälper: låt det vara som det är.',
  'help-only-time/outdoors': () => 'Bara tid och väder hjälper: låt det vara som det är.',
};
