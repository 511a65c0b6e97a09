import type { ahead as English } from '../en/ahead.ts';
import { phrase } from '../phrase.ts';
import { plural } from '../plural.ts';
import { spreadIn } from '../spread.ts';

const on = spreadIn({
  notWithinAYear: 'ikke innen et år',
  perhaps: (early) => phrase`kanskje ${early}, like gjerne senere enn om et år`,
  oneDay: (day) => day,
  about: (likely, early, late) => phrase`omkring ${likely} (tidlig ${early}, sent ${late})`,
});

export const ahead: typeof English = {
  title: 'Fremover',
  anotherPlace: 'et annet sted',
  nothingWaits:
    'Ingenting venter: ikke noe parti har et strøk igjen. Begynn et parti, eller spør nedenfor om bord som ikke er levert ennå.',
  allDone: (boards, spread) =>
    phrase`${plural('nb', boards, { one: 'Det ene bordet er ferdig', other: 'Alle # bord er ferdige' })} ${on(spread)}.`,
  batchDone: (spread) => phrase`Ferdig ${on(spread)}`,
  boardsInPart: (boards, part, of) => `${boards}, del ${part} av ${of}`,
  askedAbout: 'Bordene du spurte om',
  putUp: 'Sette opp',
  stepAt: (job, place) => `${job}, ${place}`,
  order: {
    none: (ways) =>
      `Partiene står i den rekkefølgen de tas. ${compared(ways)}; ingen kunne bli ferdig så mye som et halvt døgn tidligere.`,
    gap: (ways, days) =>
      `Partiene står i den rekkefølgen de tas. ${compared(ways)}; ingen rekkefølge kan bli ferdig mer enn ${plural('nb', days, { one: '# døgn', other: '# døgn' })} tidligere enn denne.`,
  },
  ask: {
    title: 'Og hvor mange til?',
    label: 'Flere bord, som de i det nyeste partiet',
    unit: 'bord',
    hint: 'Ingenting noteres av å spørre.',
    fault: (least, most) => `Et helt antall bord fra ${least} til ${most}, eller ingenting.`,
    button: 'Når ville de være ferdige?',
  },
  winter: {
    title: 'Før vinteren',
    noCoat: 'Ikke noe strøk gjenstår.',
    by: (date) => `Begynn senest ${date}: da har selv et tregt strøk herdet før kulden.`,
    notThisYear:
      'Ikke i år: selv om du begynner nå, ville et tregt strøk ikke herde før kulden. Vent til våren.',
    noLimit: 'Ingen siste dag: der er det varmt nok hele året.',
    cannotTell:
      'Kan ikke si: det finnes ingen målinger derfra for den årstiden, og ingen månedsmiddel er skrevet inn.',
    coatAt: (coat, place) => `${coat} på ${place}`,
    coatOf: (coat, batches) => `${coat}: ${batches}`,
    askedAbout: 'bordene du spurte om',
  },
  table: {
    title: 'Arbeid for arbeid',
    job: 'Arbeid',
    where: 'Hvor',
    likely: 'Trolig',
    early: 'Tidlig',
    late: 'Sent',
  },
  follow: {
    title: 'I telefonens kalender',
    how: (link, address) => [
      'Abonner på ',
      link,
      ' med adressen, så holdes den oppdatert så lenge telefonen er på dette nettet: ',
      address,
    ],
    link: 'denne kalenderen',
  },
  seasons: 'Hva det ble av strøkene så langt: sesongene',
  restsOn: 'Hva dette bygger på',
};

function compared(ways: number): string {
  return plural('nb', ways, { one: '# måte ble sammenlignet', other: '# måter ble sammenlignet' });
}
