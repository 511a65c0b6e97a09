import type { Phrases } from '../phrase.ts';
import type { SolventSentences } from '../subject/solvent.ts';

export const solvent: Phrases<SolventSentences> = {
  'solvent-leaves': ({ litres }, speak) =>
    `About ${speak.volume(litres, 'two-figures')} of turpentine leave this coat, most of it in the first day. Change the air; no flame, no glowing heater, no sparks. The product’s sheet and local rules come first.`,
  'solvent-estimate': (told, speak) => {
    const { volumeM3, perHour, perHourKnown, nowPpm, peakPpm, limitPpm, limitIsLocal } = told;
    const air = perHourKnown ? 'with the air changed' : 'if the air is changed only';
    const limit = limitIsLocal ? 'the limit set here' : 'the lowest published limit';
    return `Estimate for ${speak.roomVolume(volumeM3)} ${air} ${speak.perHour(perHour)} times an hour: ${speak.concentration(nowPpm)} now, ${speak.concentration(peakPpm)} at the most; ${limit} is ${speak.concentration(limitPpm, 'as-set')}. Near the boards and low down it is more. This is no gas alarm.`;
  },
  'solvent-air-needed': ({ perHour }, speak) =>
    `To stay below that it would take about ${speak.perHour(perHour)} air changes an hour through the first hours. Where that cannot be had, ask someone licensed about breathing protection.`,
  'solvent-explosive': ({ percent }, speak) =>
    `That is ${speak.percent(percent)} of what can be set alight: open doors and windows, stay out, and keep every spark away.`,
};
