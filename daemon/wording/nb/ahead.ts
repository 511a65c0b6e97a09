import type { Phrases } from '../phrase.ts';
import type { AheadSentences } from '../subject/ahead.ts';

export const ahead: Phrases<AheadSentences> = {
  'rate-outlook': () =>
    'De nærmeste døgnene føres videre fra det som er målt, med et værvarsel der et slikt er sendt.',
  'rate-own-record': () =>
    'Senere døgn tas fra samme tid i tidligere år i anleggets egne målinger.',
  'rate-typed-months': () => 'Senere døgn utendørs tas fra månedsmidlene i innstillingene.',
  'rate-last-days': () =>
    'Senere døgn antas å bli som de siste to ukene, med økende usikkerhet: anlegget har ingen målinger fra den årstiden ennå, og ingen månedsmidler er skrevet inn.',
  'place-unknown': ({ placeName }) =>
    `Ingenting er kjent om luften på ${placeName}: det som er planlagt der, har ingen tider.`,
  'capacity-unknown': () =>
    'Det er ikke sagt for hver reol hvor mye den tar, så planen tar ikke hensyn til det.',
  'in-parts': () =>
    'Et parti som er større enn reolene, planlegges i deler, den ene etter den andre.',
  'no-wall': () => 'Anlegget har ingen vegg, så alle strøk planlegges på reolene.',
  pace: ({ brushedM2, mountedBoards }, speak) =>
    `Det antas at det males ${speak.area(brushedM2)} og settes opp ${speak.number(mountedBoards)} bord i timen, én ting om gangen (vanlig praksis, ingen kilde; innstillinger).`,
  paint: () =>
    'Tidlig og sent rommer usikkerheten om malingen og om været; uhell, regn og besøk er ikke med.',
};
