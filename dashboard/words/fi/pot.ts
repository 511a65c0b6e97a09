import type { pot as English } from '../en/pot.ts';
import { plural } from '../plural.ts';

export const pot: typeof English = {
  title: 'Sekoitusastia',
  ask: {
    which: 'Mille laudoille',
    whichHint: 'Niiden suunnitelman seuraava kerros',
    ownArea: 'Oma pinta-ala',
    area: 'Pinta-ala',
    spreading: 'Seoksen riittoisuus',
    parts: {
      paint: 'Osia maalia',
      rawLinseedOil: 'Osia raakaöljyä',
      turpentine: 'Osia tärpättiä',
    },
    width: 'Astian sisäleveys',
    topWidth: 'Yläreunassa, jos leveämpi',
    height: 'Sisäkorkeus',
    more: 'Purkkien sisältö, hävikki, maalin tiheys',
    inTins: {
      paint: 'Maalia on',
      rawLinseedOil: 'Raakaöljyä on',
      turpentine: 'Tärpättiä on',
    },
    loss: 'Jää astiaan ja siveltimeen',
    weighs: 'Maalin tiheys',
    reckon: 'Laske',
  },
  forArea: (volume, area) => `${volume}, ala ${area}`,
  forCoat: (coat, volume, area) => `${coat}: ${volume}, ala ${area}`,
  sayWidth: 'Kerro, kuinka leveä astia on, niin tikun merkit näkyvät tässä.',
  pourUntil: (pots, fill, holds) => {
    const mixed = plural('fi', pots, {
      one: `Yksi astia, ${fill}`,
      other: `# samanlaista astiaa, kussakin ${fill}`,
    });
    const brim = holds === null ? '' : `; vetoisuus ${holds}`;
    return `${mixed}${brim}. Kaada, kunnes tikku on märkä tähän asti:`;
  },
  or: (volume, mass) => `${volume} tai ${mass}`,
  printStrip: 'Tulosta liuska',
  printLabel: 'Tulosta etiketti',
  whole: {
    caption: 'Koko määrä',
    inAll: 'Yhteensä',
    volume: { metric: 'Litraa', us: 'Tilavuus' },
    mass: { metric: 'Grammaa', us: 'Paino' },
    density: 'Tiheys',
    densityFrom: (density, from) => [`${density} `, from],
  },
  enough: (question, answer) => [question, ' ', answer],
  enoughQuestion: 'Riittävätkö purkit?',
  boardsEach: {
    metric: {
      planned: (planned) =>
        `Lautoja litralla: suunnitelman mukaan ${planned}, kirjauksia ei vielä ole.`,
      soFar: (planned, soFar) =>
        `Lautoja litralla: suunnitelman mukaan ${planned}, tähän asti ${soFar}.`,
    },
    us: {
      planned: (planned) =>
        `Lautoja gallonalla: suunnitelman mukaan ${planned}, kirjauksia ei vielä ole.`,
      soFar: (planned, soFar) =>
        `Lautoja gallonalla: suunnitelman mukaan ${planned}, tähän asti ${soFar}.`,
    },
  },
  shopping: {
    title: 'Mitä koko työhön ostetaan',
    paintTins: 'Maalipurkit',
    oilTins: 'Raakaöljykannut',
    turpentineTins: 'Tärpättikannut',
    sizesHint: {
      metric: 'litroina, välilyönnein erotettuina',
      us: 'gallonoina, välilyönnein erotettuina',
    },
    keepPrimer: 'Pohjamaalia varataan sahauspäille',
    makeList: 'Tee lista',
    nothing: 'Yhtään kerrosta ei ole enää tulossa: ostettavaa ei ole.',
    what: 'Mitä',
    needed: 'Tarvitaan',
    buy: 'Osta',
    saySizes: 'kerro purkkikoot',
    tins: (count, size) => `${count} × ${size}`,
    foot: (coats, loss, primer) =>
      `Mukana ${plural('fi', coats, { one: '# tuleva kerros', other: '# tulevaa kerrosta' })}, hävikki ${loss} ja sahauspäille varattu pohjamaali ${primer}. Ohennettu maali ei säily loputtomiin: osta se, mikä kaudessa kuluu.`,
  },
};
