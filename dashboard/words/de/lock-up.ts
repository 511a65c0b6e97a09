import type { lockUp as English } from '../en/lock-up.ts';
import { phrase } from '../phrase.ts';

export const lockUp: typeof English = {
  title: 'Feierabend',
  printCard: 'Die Karte für die Tür drucken',
  cardWorks: 'Sie hilft auch, wenn dieser Rechner nicht läuft.',
  noCoatingDay: 'Heute wurde nichts gestrichen oder geschliffen, soweit es jemand eingetragen hat.',
  tickProves:
    'Ein Haken beweist nichts: hinsehen, anfassen. An die Lappen wird erinnert, bis sie abgehakt sind.',
  whoLooks: 'Wer sieht nach',
  seenTo: (moment) => phrase`Erledigt, ${moment}`,
  seenToBy: (who, moment) => phrase`Erledigt von ${who}, ${moment}`,
  night: {
    title: 'Heute Nacht, wo nasse Bretter liegen',
    noLow:
      'Der tiefste Wert dieser Nacht lässt sich noch nicht sagen: Die Messwerte reichen nicht weit genug zurück.',
    low: (temperature, error, moment) =>
      phrase`Am tiefsten etwa ${temperature} (± ${error}), ${moment}.`,
    atRisk: (batch, reasons) => [batch, ' ist gefährdet: ', reasons],
    nothing: 'Nichts, was heute Nacht zu erwarten ist, spricht gegen sie.',
  },
};
