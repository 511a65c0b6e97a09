import type { ahead as English } from '../en/ahead.ts';
import { phrase } from '../phrase.ts';
import { plural } from '../plural.ts';
import { spreadIn } from '../spread.ts';

const on = spreadIn({
  notWithinAYear: 'ei vuoden kuluessa',
  perhaps: (early) => phrase`ehkä ${early}, yhtä hyvin vasta yli vuoden kuluttua`,
  oneDay: (day) => day,
  about: (likely, early, late) => phrase`noin ${likely} (varhain: ${early}, myöhään: ${late})`,
});

function compared(ways: number): string {
  return plural('fi', ways, {
    one: 'Verrattuja järjestyksiä: #',
    other: 'Verrattuja järjestyksiä: #',
  });
}

export const ahead: typeof English = {
  title: 'Tulossa',
  anotherPlace: 'muu paikka',
  nothingWaits:
    'Mikään ei odota: yhdelläkään erällä ei ole kerrosta tulossa. Aloita erä, tai kysy alempana laudoista, jotka ovat vielä tulossa.',
  allDone: (boards, spread) =>
    phrase`${plural('fi', boards, { one: 'Ainoa lauta on', other: 'Kaikki # lautaa ovat' })} valmiina: ${on(spread)}.`,
  batchDone: (spread) => phrase`Valmiina: ${on(spread)}`,
  boardsInPart: (boards, part, of) => `${boards}, osa ${part}/${of}`,
  askedAbout: 'Laudat, joista kysyit',
  putUp: 'Asennus',
  stepAt: (job, place) => `${job}, ${place}`,
  order: {
    none: (ways) =>
      `Erät ovat siinä järjestyksessä, jossa ne tehdään. ${compared(ways)}; mikään niistä ei valmistuisi puolta päivää aikaisemmin.`,
    gap: (ways, days) =>
      `Erät ovat siinä järjestyksessä, jossa ne tehdään. ${compared(ways)}; mikään niistä ei valmistuisi tätä aikaisemmin kuin enintään ${plural('fi', days, { one: '# päivän', other: '# päivää' })}.`,
  },
  ask: {
    title: 'Entä kuinka monta lisää?',
    label: 'Lisää lautoja, samanlaisia kuin uusimmassa erässä',
    unit: 'lautaa',
    hint: 'Kysyminen ei kirjaa mitään.',
    fault: (least, most) => `Kokonainen määrä lautoja, ${least}–${most}, tai ei mitään.`,
    button: 'Milloin ne olisivat valmiita?',
  },
  winter: {
    title: 'Ennen talvea',
    noCoat: 'Yhtään kerrosta ei ole tulossa.',
    by: (date) => `Aloita viimeistään ${date}: silloin hidaskin kerros on kovettunut ennen kylmiä.`,
    notThisYear:
      'Ei tänä vuonna: nytkään aloitettuna hidas kerros ei ehtisi kovettua ennen kylmiä. Odota kevättä.',
    noLimit: 'Ei viimeistä päivää: siellä pysyy tarpeeksi lämpimänä ympäri vuoden.',
    cannotTell:
      'Ei voi sanoa: paikasta ei ole tietoja siltä vuodenajalta, eikä kuukausien keskiarvoja ole annettu.',
    coatAt: (coat, place) => `${coat}, paikka: ${place}`,
    coatOf: (coat, batches) => `${coat}: ${batches}`,
    askedAbout: 'laudat, joista kysyit',
  },
  table: {
    title: 'Työ työltä',
    job: 'Työ',
    where: 'Missä',
    likely: 'Todennäköisesti',
    early: 'Varhain',
    late: 'Myöhään',
  },
  follow: {
    title: 'Puhelimen kalenterissa',
    how: (link, address) => [
      'Tilaa ',
      link,
      ' osoitteestaan, niin se pysyy ajan tasalla, kun puhelin on tässä verkossa: ',
      address,
    ],
    link: 'tämä kalenteri',
  },
  seasons: 'Miten kerroksille on käynyt tähän asti: kaudet',
  restsOn: 'Mihin tämä perustuu',
};
