import type { lockUp as English } from '../en/lock-up.ts';
import { phrase } from '../phrase.ts';

export const lockUp: typeof English = {
  title: 'Stenge for kvelden',
  printCard: 'Skriv ut kortet til døren',
  cardWorks: 'Det virker når denne datamaskinen ikke gjør det.',
  noCoatingDay: 'Ingenting ble malt eller slipt i dag, så langt noen har notert.',
  tickProves:
    'Et kryss beviser ingenting: se på det, ta på det. Påminnelsen om fillene kommer til de er krysset av.',
  whoLooks: 'Hvem som ser etter',
  seenTo: (moment) => phrase`Sett til, ${moment}`,
  seenToBy: (who, moment) => phrase`Sett til av ${who}, ${moment}`,
  night: {
    title: 'I natt, der våte bord ligger',
    noLow: 'Nattens laveste kan ikke sies ennå: målingene rekker ikke langt nok tilbake.',
    low: (temperature, error, moment) =>
      phrase`Lavest omkring ${temperature} (± ${error}), ${moment}.`,
    atRisk: (batch, reasons) => [batch, ' er i faresonen: ', reasons],
    nothing: 'Ingenting av det som ventes i natt, taler imot dem.',
  },
};
