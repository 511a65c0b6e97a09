import type { Phrases } from '../phrase.ts';
import type { HelpSentences } from '../subject/help.ts';

const heaterCaution =
  'Only with a heater that has no flame and nothing glowing, or one whose fumes go outdoors, clear of boards, rags and vapour, by its instructions and local rules. Never an open flame, a glowing or an unvented heater.';

const dryTheAir =
  'dry the air, or change it while it is drier outside. By itself it is not reckoned to cure sooner.';

/** So many hours, from a day and a half on in days. */
const inHoursOrDays = (hours: number) =>
  hours < 36 ? `${Math.round(hours)} hours` : `${Math.round(hours / 24)} days`;

export const help: Phrases<HelpSentences> = {
  'air-unknown/how-warm': () => 'No fresh reading tells how warm it is there.',
  'stands-still': ({ tempC }, speak) => `At ${speak.temperature(tempC)} it hardly cures.`,
  cold: ({ tempC }, speak) => `It is cold there: ${speak.temperature(tempC)}.`,
  damp: ({ rhPercent }, speak) => `It is damp there: ${speak.humidity(rhPercent)}.`,
  'still-air': () => 'The air there stands still.',
  'failed-test/slow-coat': () => 'It failed a touch test, so it is a slow coat.',
  time: () => 'Nothing is wrong: the oil takes up oxygen at its own pace.',
  'help-changed-air': () =>
    'Change the air: open opposite doors, space the boards out. Shut up in the evening when it gets wetter outside. No fan straight on wet film.',
  'help-changed-air/wetter-outside': () =>
    'Change the air when it is drier outside than in; now it is wetter. Give the boards more space meanwhile. No fan straight on wet film.',
  'help-drier': () => `Damp air keeps timber wet and the film open to dew: ${dryTheAir}`,
  'help-drier/near-dew': ({ marginK }, speak) =>
    `Within a day the boards come within ${speak.temperatureDifference(marginK)} of the dew point: ${dryTheAir}`,
  'help-warmer-later': () =>
    'Warmth would help, but not within the first day after a coat with turpentine: let the vapour out first, with no heater and no spark about.',
  'help-warmer': ({ toTempC, soonerHours }, speak) =>
    `Kept at ${speak.temperature(toTempC, 0)}: about ${inHoursOrDays(soonerHours)} sooner. ${heaterCaution}`,
  'help-warmer/at-all': ({ toTempC }, speak) =>
    `Kept at ${speak.temperature(toTempC, 0)}: it would cure at all. ${heaterCaution}`,
  'help-touch': () => 'Feel it: a touch test says more than any reckoning now.',
  'help-only-time': () => 'Only time helps: leave it as it is.',
  'help-only-time/outdoors': () => 'Only time and weather help: leave it as it is.',
};
