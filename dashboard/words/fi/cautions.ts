import type { Caution } from '../caution.ts';
import type { cautions as English } from '../en/cautions.ts';

const rags: Caution = {
  title: 'Rätit, heti',
  lines: [
    'Rätit, sienet ja paperit, joissa on pellavaöljyä, lämpenevät itsestään ja voivat syttyä palamaan tuntien kuluttua. Älä koskaan jätä niitä kasaan, taskuun tai roskiin.',
    'Levitä ne ulos yhteen kerrokseen palamattomalle alustalle, kunnes ne ovat kovettuneet jäykiksi; tai upota ne veteen kannelliseen metalliastiaan.',
    'Hävitä ne sitten paikallisten määräysten mukaan.',
  ],
};

export const cautions: typeof English = {
  link: 'Varoitukset',
  short:
    'Öljyiset rätit voivat syttyä itsestään. Kaikki luvut ovat arvioita; maalinvalmistajan ohje ja paikalliset määräykset ovat etusijalla.',
  wall: 'Öljyiset rätit voivat syttyä itsestään. Luvut ovat arvioita.',
  ragsLine:
    'Tämän päivän öljyiset rätit? Levälleen yhteen kerrokseen ulos, tai veteen kannelliseen metalliastiaan.',
  rags,
};
