import type { Phrases } from '../phrase.ts';
import type { SolventSentences } from '../subject/solvent.ts';

export const solvent: Phrases<SolventSentences> = {
  'solvent-leaves': ({ litres }, speak) =>
    `Omtrent ${speak.volume(litres, 'two-figures')} terpentin går ut av dette strøket, det meste i det første døgnet. Skift luft; ingen flamme, ingen glødende varmeovn, ingen gnister. Produktets sikkerhetsdatablad og lokale regler går foran.`,
  'solvent-estimate': (told, speak) => {
    const { volumeM3, perHour, perHourKnown, nowPpm, peakPpm, limitPpm, limitIsLocal } = told;
    const air = perHourKnown ? 'der luften skiftes' : 'hvis luften bare skiftes';
    const limit = limitIsLocal ? 'grensen som er satt her' : 'den laveste publiserte grensen';
    return `Anslag for ${speak.roomVolume(volumeM3)} ${air} ${speak.perHour(perHour)} ganger i timen: ${speak.concentration(nowPpm)} nå, ${speak.concentration(peakPpm)} på det meste; ${limit} er ${speak.concentration(limitPpm, 'as-set')}. Nær bordene og nede ved gulvet er det mer. Dette er ingen gassalarm.`;
  },
  'solvent-air-needed': ({ perHour }, speak) =>
    `For å holde seg under det ville det trengs omtrent ${speak.perHour(perHour)} luftskift i timen gjennom de første timene. Lar det seg ikke gjøre, spør en godkjent fagperson om åndedrettsvern.`,
  'solvent-explosive': ({ percent }, speak) =>
    `Det er ${speak.percent(percent)} av det som kan antennes: åpne dører og vinduer, hold deg ute, og hold enhver gnist unna.`,
};
