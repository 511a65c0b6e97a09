import type { lockUp as English } from '../en/lock-up.ts';
import { phrase } from '../phrase.ts';

export const lockUp: typeof English = {
  title: 'Ennen lukitsemista',
  printCard: 'Tulosta oven kortti',
  cardWorks: 'Se toimii, kun tämä tietokone ei toimi.',
  noCoatingDay: 'Tänään ei ole maalattu eikä hiottu mitään, sikäli kuin joku on kirjannut.',
  tickProves:
    'Rasti ei todista mitään: katso, kosketa. Räteistä muistutetaan, kunnes ne on rastitettu.',
  whoLooks: 'Kuka katsoo',
  seenTo: (moment) => phrase`Hoidettu, ${moment}`,
  seenToBy: (who, moment) => phrase`Hoidettu, ${who}, ${moment}`,
  night: {
    title: 'Ensi yö siellä, missä märät laudat ovat',
    noLow:
      'Yön alinta lämpötilaa ei voi vielä sanoa: lukemat eivät ulotu tarpeeksi kauas taaksepäin.',
    low: (temperature, error, moment) =>
      phrase`Alimmillaan noin ${temperature} (± ${error}), ${moment}.`,
    atRisk: (batch, reasons) => [batch, ' on vaarassa: ', reasons],
    nothing: 'Mikään ensi yöksi odotettu ei uhkaa niitä.',
  },
};
