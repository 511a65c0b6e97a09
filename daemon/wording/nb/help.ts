import type { Phrases } from '../phrase.ts';
import type { HelpSentences } from '../subject/help.ts';

const heaterCaution =
  'Bare med en varmeovn uten flamme og uten noe som gløder, eller en der avgassene går ut i det fri, på avstand fra bord, filler og damp, etter bruksanvisningen og lokale regler. Aldri åpen flamme, en glødende ovn eller en ovn uten avtrekk.';

const dryTheAir =
  'avfukt luften, eller skift den mens det er tørrere ute. Det alene regnes ikke å gi raskere herding.';

/** So many hours, from a day and a half on in days. */
const inHoursOrDays = (hours: number) =>
  hours < 36 ? `${Math.round(hours)} timer` : `${Math.round(hours / 24)} døgn`;

export const help: Phrases<HelpSentences> = {
  'air-unknown/how-warm': () => 'Ingen fersk måling forteller hvor varmt det er der.',
  'stands-still': ({ tempC }, speak) => `Ved ${speak.temperature(tempC)} herder det knapt.`,
  cold: ({ tempC }, speak) => `Det er kaldt der: ${speak.temperature(tempC)}.`,
  damp: ({ rhPercent }, speak) => `Det er fuktig der: ${speak.humidity(rhPercent)}.`,
  'still-air': () => 'Luften der står stille.',
  'failed-test/slow-coat': () => 'Det besto ikke en følertest, så det er et langsomt strøk.',
  time: () => 'Ingenting er galt: oljen tar opp oksygen i sitt eget tempo.',
  'help-changed-air': () =>
    'Skift luft: åpne dører rett overfor hverandre, legg bordene lenger fra hverandre. Lukk om kvelden når det blir fuktigere ute. Ingen vifte rett på våt maling.',
  'help-changed-air/wetter-outside': () =>
    'Skift luft når det er tørrere ute enn inne; nå er det fuktigere. Gi bordene mer plass så lenge. Ingen vifte rett på våt maling.',
  'help-drier': () => `Fuktig luft holder trevirket vått og malingen utsatt for dugg: ${dryTheAir}`,
  'help-drier/near-dew': ({ marginK }, speak) =>
    `Innen et døgn kommer bordene til innenfor ${speak.temperatureDifference(marginK)} fra duggpunktet: ${dryTheAir}`,
  'help-warmer-later': () =>
    'Varme ville hjelpe, men ikke i det første døgnet etter et strøk med terpentin: slipp ut dampen først, uten varmeovn og uten gnister i nærheten.',
  'help-warmer': ({ toTempC, soonerHours }, speak) =>
    `Holdt på ${speak.temperature(toTempC, 0)}: omtrent ${inHoursOrDays(soonerHours)} tidligere. ${heaterCaution}`,
  'help-warmer/at-all': ({ toTempC }, speak) =>
    `Holdt på ${speak.temperature(toTempC, 0)}: da ville det i det hele tatt herde. ${heaterCaution}`,
  'help-touch': () => 'Kjenn på det: en følertest sier mer enn noen utregning nå.',
  'help-only-time': () => 'Bare tid hjelper: la det være som det er.',
  'help-only-time/outdoors': () => 'Bare tid og vær hjelper: la det være som det er.',
};
