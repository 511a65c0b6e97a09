import type { lockUp as English } from '../en/lock-up.ts';
import { phrase } from '../phrase.ts';

export const lockUp: typeof English = {
  title: 'Stänga för kvällen',
  printCard: 'Skriv ut kortet till dörren',
  cardWorks: 'Det fungerar när datorn inte gör det.',
  noCoatingDay: 'Ingenting ströks eller slipades i dag, såvitt någon har antecknat.',
  tickProves:
    'En bock bevisar ingenting: titta, känn. Påminnelsen om trasorna kommer tills de är avprickade.',
  whoLooks: 'Vem som tittar',
  seenTo: (moment) => phrase`Ordnat, ${moment}`,
  seenToBy: (who, moment) => phrase`Ordnat av ${who}, ${moment}`,
  night: {
    title: 'I natt, där våta brädor ligger',
    noLow:
      'Nattens lägsta går inte att säga än: mätvärdena räcker inte tillräckligt långt tillbaka.',
    low: (temperature, error, moment) =>
      phrase`Lägst omkring ${temperature} (± ${error}), ${moment}.`,
    atRisk: (batch, reasons) => [batch, ' är i farozonen: ', reasons],
    nothing: 'Inget av det som väntas i natt talar emot dem.',
  },
};
