import type { forms as English } from '../en/forms.ts';

export const forms: typeof English = {
  when: {
    justNow: 'Juuri nyt',
    another: 'Muuna aikana',
    dateAndTime: 'Päivä ja kellonaika',
    incomplete: 'tarvitsee päivämäärän, jossa vuosi on nelinumeroinen, ja kellonajan',
  },
  closed: (choosePin) => [
    'Muutoksia otetaan toistaiseksi vastaan vain tietokoneelta itseltään: avaa tämä sivu siellä, tai ',
    choosePin,
    '.',
  ],
  choosePin: 'valitse PIN-koodi',
  besideFields: {
    title: 'Jokin ei täsmää',
    look: 'Katso merkityt kentät: vika lukee kentän alla.',
  },
  problems: {
    AWAY: {
      title: 'Taustaohjelma ei vastaa',
      detail: 'Vastausta ei tullut, joten kirjaus ei ehkä tallentunut.',
      doThis: 'Katso, onko vajan tietokone päällä ja verkossa, ja lähetä sitten uudelleen.',
    },
    UNREADABLE: {
      title: 'Vastausta ei voitu lukea',
      detail: 'Jokin muu kuin taustaohjelma vastasi.',
      doThis: 'Tarkista tämän sivun osoite.',
    },
    NOT_KEPT: {
      title: 'Ei lähetetty, eikä tämä laite voi tallentaa mitään',
      detail:
        'Taustaohjelma ei vastaa, eikä tämä selain anna sivun tallentaa mitään: ikkuna on yksityinen tai laite on täynnä.',
      doThis: 'Jätä tämä sivu auki sellaisenaan ja lähetä uudelleen, kun verkko on palannut.',
    },
  },
};
