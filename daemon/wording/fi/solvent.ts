import type { Phrases } from '../phrase.ts';
import type { SolventSentences } from '../subject/solvent.ts';

export const solvent: Phrases<SolventSentences> = {
  'solvent-leaves': ({ litres }, speak) =>
    `Tästä kerroksesta haihtuu tärpättiä noin ${speak.volume(litres, 'two-figures')}, suurin osa ensimmäisen vuorokauden aikana. Vaihda ilmaa; ei liekkiä, ei hehkuvaa lämmitintä, ei kipinöitä. Tuotteen ohje ja paikalliset määräykset ovat etusijalla.`,
  'solvent-estimate': (told, speak) => {
    const { volumeM3, perHour, perHourKnown, nowPpm, peakPpm, limitPpm, limitIsLocal } = told;
    const air = perHourKnown ? 'kun ilma vaihtuu' : 'jos ilma vaihtuu vain';
    const limit = limitIsLocal ? 'täällä asetettu raja' : 'matalin julkaistu raja';
    return `Arvio, huone ${speak.roomVolume(volumeM3)}, ${air} ${speak.perHour(perHour)} kertaa tunnissa: nyt ${speak.concentration(nowPpm)}, enimmillään ${speak.concentration(peakPpm)}; ${limit} on ${speak.concentration(limitPpm, 'as-set')}. Lautojen lähellä ja alhaalla sitä on enemmän. Tämä ei ole kaasuhälytin.`;
  },
  'solvent-air-needed': ({ perHour }, speak) =>
    `Sen alittamiseen tarvittaisiin noin ${speak.perHour(perHour)} ilmanvaihtoa tunnissa ensimmäisten tuntien ajan. Jos siihen ei päästä, kysy hengityksensuojaimista luvan saaneelta ammattilaiselta.`,
  'solvent-explosive': ({ percent }, speak) =>
    `Se on ${speak.percent(percent)} siitä pitoisuudesta, joka voi syttyä: avaa ovet ja ikkunat, pysy poissa, ja pidä kaikki kipinät kaukana.`,
};
