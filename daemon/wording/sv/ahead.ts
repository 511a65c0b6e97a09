import type { Phrases } from '../phrase.ts';
import type { AheadSentences } from '../subject/ahead.ts';

export const ahead: Phrases<AheadSentences> = {
  'rate-outlook': () =>
    'De närmaste dygnen förlängs från vad som mätts upp, med en väderprognos om någon har skickats.',
  'rate-own-record': () =>
    'Senare dygn tas från samma tid tidigare år i anläggningens egna uppgifter.',
  'rate-typed-months': () => 'Senare dygn utomhus tas från månadsmedlen i inställningarna.',
  'rate-last-days': () =>
    'Senare dygn antas bli som de senaste två veckorna, med växande osäkerhet: det finns inga uppgifter om den årstiden än, och inga månadsmedel har skrivits in.',
  'place-unknown': ({ placeName }) =>
    `Ingenting är känt om luften på ${placeName}: det som planeras där har inga tider.`,
  'capacity-unknown': () =>
    'Det är inte sagt för varje ställ hur mycket det rymmer, så planen tar inte hänsyn till det.',
  'in-parts': () => 'Ett parti som är större än ställen planeras i delar, en efter en.',
  'no-wall': () => 'Det finns ingen vägg, så alla strykningar planeras på ställen.',
  pace: ({ brushedM2, mountedBoards }, speak) =>
    `En person antas stryka ${speak.area(brushedM2)} och sätta upp ${speak.number(mountedBoards)} brädor i timmen, en sak i taget (allmän praxis, ingen källa; inställningar).`,
  paint: () =>
    'Tidigt och sent innehåller osäkerheten om färgen och om vädret; haverier, regn och besök ingår inte.',
};
