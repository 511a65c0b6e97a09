import type { print as English } from '../en/print.ts';

export const print: typeof English = {
  print: 'Tulosta',
  phone: {
    address: 'Osoite, jolla puhelimet tavoittavat tämän tietokoneen',
    notFollowed: (example) =>
      `Puhelin ei voi seurata tätä osoitetta: kirjoita tämän tietokoneen nimi tai numero verkossa, esimerkiksi ${example}.`,
    code: 'QR-koodi, joka vie näiden lautojen sivulle',
  },
  mixture: 'Seos',
  card: 'Kortti',
  cardNotDrawn: 'Korttia ei voi piirtää',
  door: {
    title: 'Oven kortti',
    how: {
      metric:
        'A4 pystyssä. Ripusta silmien korkeudelle sen oven sisäpuolelle, joka lukitaan viimeisenä.',
      us: 'Letter pystyssä. Ripusta silmien korkeudelle sen oven sisäpuolelle, joka lukitaan viimeisenä.',
    },
    name: 'Ennen kuin lukitset',
    when: 'Jokaisena päivänä, jona maalataan, öljytään tai hiotaan. Rasti ei todista mitään: katso, kosketa.',
    line: (title, text) => [title, ' ', text],
    fire: 'Savua tai palaneen hajua: kaikki ulos, ovi kiinni, soita palokunnalle: ____________. Osoitteemme: ____________________________',
    foot: 'Yleinen käytäntö; paikalliset määräykset ja maalinvalmistajan ohje ovat etusijalla.',
  },
  label: {
    title: 'Astian etiketti',
    notDrawn: 'Etikettiä ei voi piirtää',
    how: (size) =>
      `${size}. Leikkaa irti ja kiinnitä kirkkaalla teipillä, ennen kuin astia on märkä ulkopuolelta.`,
    label: 'Etiketti',
    forBoards: 'laudat: ________________',
    share: (part, percent) => `${part} ${percent}`,
    colour: 'Väri ________________',
    mixed: (date) => `Sekoitettu ${date}`,
    mind: 'Sekoita pohjasta asti. Pidä suljettuna, kaukana tulesta, lasten ulottumattomissa lukon takana. Rätit syttyvät itsestään: veteen kannen alle. Vaarallista jätettä.',
  },
  rack: {
    title: 'Telineen kortti',
    how: {
      metric:
        'A5 vaakaan. Ripusta paikkaan, jossa märkä lauta ei osu siihen; koodi avaa näiden lautojen sivun puhelimessa.',
      us: 'Puolikas letter-arkki vaakaan. Ripusta paikkaan, jossa märkä lauta ei osu siihen; koodi avaa näiden lautojen sivun puhelimessa.',
    },
    boards: (count, species, surface, size) => `${count} × ${species}, ${surface}, ${size}`,
    coat: 'Kerros',
    mixture: 'Seos',
    lastBoardDone: 'Viimeinen lauta',
    feltDry: 'Tuntui kuivalta',
    foot: 'Märkä: kosketa vain kokeeksi. Öljyiset rätit syttyvät itsestään.',
  },
  strip: {
    title: 'Sekoitustikun liuska',
    notDrawn: 'Liuskaa ei voi piirtää',
    noWidth: (back) => ['Kukaan ei ole kertonut, kuinka leveä astia on. ', back],
    back: 'Takaisin astiaan',
    how: (line) =>
      `Tulosta koossa 100 %, ei sivulle sovitettuna, ja mittaa viivoittimella, että viiva on ${line}, ennen kuin leikkaat. Liuskan alareuna on astian pohjalla.`,
    tooLong: {
      metric: (length) =>
        `Liuskan pituus on ${length}, eikä se mahdu A4-arkille: ota leveämpi astia tai sekoita vähemmän kerralla.`,
      us: (length) =>
        `Liuskan pituus on ${length}, eikä se mahdu letter-arkille: ota leveämpi astia tai sekoita vähemmän kerralla.`,
    },
    mark: (part, figure) => `${part} ${figure}`,
    spoken: (marks, unit) => `Liuska, merkit kohdissa ${marks} ${unit}`,
    checkSpoken: (length) => `Tarkistusviiva, pituus ${length}`,
    check: (length) => `tämän viivan pituus on ${length}`,
  },
};
