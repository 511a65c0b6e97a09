import type { Phrases } from '../phrase.ts';
import type { SolventSentences } from '../subject/solvent.ts';

export const solvent: Phrases<SolventSentences> = {
  'solvent-leaves': ({ litres }, speak) =>
    `Omkring ${speak.volume(litres, 'two-figures')} terpentin lämnar den här strykningen, det mesta under första dygnet. Byt luft; ingen låga, ingen glödande värmare, inga gnistor. Produktens säkerhetsdatablad och lokala regler går före.`,
  'solvent-estimate': (told, speak) => {
    const { volumeM3, perHour, perHourKnown, nowPpm, peakPpm, limitPpm, limitIsLocal } = told;
    const air = perHourKnown ? 'där luften byts' : 'om luften bara byts';
    const limit = limitIsLocal ? 'gränsen som är inställd här' : 'den lägsta publicerade gränsen';
    return `Uppskattning för ${speak.roomVolume(volumeM3)} ${air} ${speak.perHour(perHour)} gånger i timmen: ${speak.concentration(nowPpm)} nu, som mest ${speak.concentration(peakPpm)}; ${limit} är ${speak.concentration(limitPpm, 'as-set')}. Nära brädorna och vid golvet är det mer. Det här är inget gaslarm.`;
  },
  'solvent-air-needed': ({ perHour }, speak) =>
    `För att hålla sig under det skulle det behövas omkring ${speak.perHour(perHour)} luftväxlingar i timmen under de första timmarna. Går det inte att ordna, fråga en behörig fackman om andningsskydd.`,
  'solvent-explosive': ({ percent }, speak) =>
    `Det är ${speak.percent(percent)} av vad som kan antändas: öppna dörrar och fönster, håll dig ute, och håll varje gnista borta.`,
};
