import type { Phrases } from '../phrase.ts';
import type { TimberSentences } from '../subject/timber.ts';

export const timber: Phrases<TimberSentences> = {
  'maybe-lead': () =>
    'Regn gammel maling som blymaling til en test sier noe annet: test først. Ingen tørrsliping, ingen avbrenning, ingen åpen skraping; hold barn unna og følg de lokale reglene for arbeid med bly.',
  weathered: () =>
    'Værgrått trevirke holder dårlig på maling: fjern de grå fibrene ned til friskt tre, la det tørke, og mal så. Bruk støvmaske.',
  'weathered-by-now': ({ days, limitDays }, speak) =>
    `Det ble levert for ${days} døgn siden og lå bart utendørs: se om det er blitt værgrått. Mer enn omtrent ${speak.number(limitDays)} døgn regnes som værgrått.`,
  wrapped: () =>
    'Trevirke som ligger innpakket, svetter: åpne, legg det på strø og mål trefuktigheten før du maler.',
  'knots-not-looked': () =>
    'Se på kvister og kvae før grunningen: skrap av kvaen, og tørk av flekkene med terpentin der produsentens datablad tillater det.',
  resin: () =>
    'Kvae hindrer malingen over den i å tørke og slår gjennom: skrap den av, tørk av flekkene, og kjenn på en kvist når du tester.',
  'on-stickers': () =>
    'På strø holder malingen seg våt under hver lekt og får merker: vend bordene så snart de kan vendes.',
  'recoat-wash': ({ days }) =>
    `Det har stått utendørs i ${days} døgn: vask det, la det tørke og matt det ned først. Det er ikke for sent for neste strøk.`,
  'recoat-winter': () =>
    'Det har stått over vinteren: se også etter mugg og kritting. Mugg vaskes av og drepes, kritt vaskes av til en mørk klut holder seg ren, før neste strøk.',
  'tin-old': ({ tinName, months }) =>
    `Boksen «${tinName}» hadde vært åpen i ${months} måneder: sikkativ svekkes med alderen, så strøket får mer tid. Prøv på en prøvebit først.`,
  'tin-drier-poor': ({ tinName }) =>
    `Malingen i «${tinName}» har lite sikkativ: strøket får mer tid. Prøv på en prøvebit først.`,
};
