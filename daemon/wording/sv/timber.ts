import type { Phrases } from '../phrase.ts';
import type { TimberSentences } from '../subject/timber.ts';

export const timber: Phrases<TimberSentences> = {
  'maybe-lead': () =>
    'Räkna gammal färg som blyfärg tills ett prov säger annat: pröva först. Ingen torrslipning, ingen avbränning, ingen öppen skrapning; håll barn borta och följ de lokala reglerna för arbete med bly.',
  weathered: () =>
    'Grånat virke håller färg dåligt: ta bort de grå fibrerna ner till friskt trä, låt det torka, stryk sedan. Bär andningsmask.',
  'weathered-by-now': ({ days, limitDays }, speak) =>
    `Det levererades för ${days} dygn sedan och låg bart utomhus: se om det har grånat. Mer än omkring ${speak.number(limitDays)} dygn räknas som grånat.`,
  wrapped: () =>
    'Inplastat virke svettas: öppna, lägg det på strö och mät fuktkvoten innan du stryker.',
  'knots-not-looked': () =>
    'Titta på kvistar och kåda före grundstrykningen: skrapa bort kådan, och torka av fläckarna med terpentin där tillverkarens anvisningar tillåter det.',
  resin: () =>
    'Kåda hindrar färgen över den från att torka och slår igenom: skrapa bort den, torka av fläckarna, och känn på en kvist när du provar.',
  'on-stickers': () =>
    'På strö förblir färgen våt under varje ströläkt och får märken: vänd brädorna så snart de får vändas.',
  'recoat-wash': ({ days }) =>
    `Det har stått utomhus i ${days} dygn: tvätta, låt torka och matta ner först. Det är inte för sent för nästa strykning.`,
  'recoat-winter': () =>
    'Det har stått över vintern: leta även efter mögel och kritning. Mögel tvättas bort och avdödas, kritning tvättas tills en mörk trasa förblir ren, före nästa strykning.',
  'tin-old': ({ tinName, months }) =>
    `Burken ”${tinName}” hade varit öppen i ${months} månader: sickativ avtar med åldern, så strykningen får mer tid. Pröva på en provbit först.`,
  'tin-drier-poor': ({ tinName }) =>
    `Färgen i ”${tinName}” är fattig på sickativ: strykningen får mer tid. Pröva på en provbit först.`,
};
