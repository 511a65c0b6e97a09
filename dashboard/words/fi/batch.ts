import type { batch as English } from '../en/batch.ts';
import { plural } from '../plural.ts';

const capitalised = (words: string) => words.charAt(0).toLocaleUpperCase('fi') + words.slice(1);

const boards = (count: number) => plural('fi', count, { one: '# lauta', other: '# lautaa' });

export const batch: typeof English = {
  cannotShow: 'Tätä erää ei voi näyttää',
  verdict: 'Arvio',
  stepByStep: 'Maalaa vaihe vaiheelta',
  printCard: 'Tulosta telineen kortti',
  report: 'Tämän erän raportti tulostettavaksi tai talteen',
  facts: {
    at: (place) => `paikka: ${place}`,
    boards: (count, species) => `${boards(count)}, ${species}`,
    closed: 'päätetty',
    recomputing: 'myöhässä tulleita lukemia lasketaan mukaan',
  },
  hero: {
    notSure: 'Ei enää varmaa',
    spoken: (sign, job) => `${capitalised(job)}: ${sign.toLocaleLowerCase('fi')}`,
    coat: (number, all, coat, stage) => `Kerros ${number}/${all}, ${coat}: ${stage}.`,
    faces: (faces) => `Sivut: ${faces}.`,
    lastBoard: (moment) => ['Viimeinen lauta: ', moment, '.'],
    sum: (degreeHours, hours, at) =>
      `${degreeHours}, saman verran kuin ${hours} lämpötilassa ${at}.`,
    gathered: (degreeHours, needed) =>
      `Kertynyt ${degreeHours}; uuteen kerrokseen tarvitaan todennäköisesti ${needed}.`,
  },
  jobs: {
    title: 'Mitä laudoille voi tehdä',
    odds: (odds) => `Mahdollisuus: ${odds}`,
    how: 'Miten sitä tunnustellaan',
    exact: 'Tarkat ajat',
    oddsColumn: 'Mahdollisuus',
    by: 'Mihin mennessä',
    needs: 'Vaatii',
    oneInTen: '1/10',
    oneInTwo: '1/2',
    nineInTen: '9/10',
    unknown: 'tuntematon tai mennyt',
    footnote:
      'Mahdollisuudet koskevat hitainta kymmenesosaa laudoista. Työn vaatima määrä on alkuoletus, kunnes kosketuskokeet ovat opettaneet paremmin.',
  },
  helps: 'Mikä auttaisi',
  air: {
    title: (place) => `Ilma, ${place}`,
    now: (temperature, humidity, dewPoint, word) => [
      `${temperature}, ${humidity}, kastepiste ${dewPoint}. Ilma: `,
      word,
      '.',
    ],
    apart: (difference) => `Täkäläisten anturien ero on ${difference}; kylmin niistä ratkaisee.`,
    apartInHumidity: (difference) =>
      `Täkäläisten anturien ero kosteudessa on ${difference}; kastetta arvioitaessa ratkaisee kostein.`,
  },
  coats: {
    title: 'Kerrokset',
    name: (number, all, coat) => `${number}/${all}: ${coat}`,
    used: (volume) => `kului ${volume}`,
    tin: (tin) => `purkki ${tin}`,
    lastBoard: 'Viimeinen lauta',
    stage: 'Vaihe',
    sum: 'Summa',
    lowToHigh: 'Pienin–suurin',
    range: (low, high) => `${low} – ${high}`,
    hoursAt: (temperature) => `Lämpötilassa ${temperature}`,
    arrhenius: 'Arrheniuksen mukaan',
    measured: 'Mitattu',
    gaps: 'Ilman lukemia',
    needs: 'Uusi kerros vaatii todennäköisesti',
    model: 'Malli',
    models: {
      'nurse-saul': (datum, gap) =>
        `lämpötilasumma, nollakohta ${datum}, aukkoja (yli ${gap}) ei lasketa`,
      arrhenius: (gap) => `Arrhenius, aukkoja (yli ${gap}) ei lasketa`,
    },
    byMistake: 'Kirjattu vahingossa',
    byMistakeHow: 'Kirjattu vahingossa? Se säilyy peruttuna.',
    leave: 'Anna olla',
  },
  log: {
    title: 'Mitä on kirjattu',
    nothing: 'Ei vielä mitään. Kosketuskoe opettaa enemmän kuin yksikään taulukko.',
    moved: (place) => `Siirretty, uusi paikka: ${place}`,
    remark: (remark, text) => `${remark}: ${text}`,
    meter: (quantity, figures) => `${quantity}: ${figures}`,
    passed: (job, sum, on, felt) => `Valmis ${job}, ${sum}, tunnusteltu ${on}: ${felt}`,
    failed: (job, sum, on, felt) => `Ei vielä valmis ${job}, ${sum}, tunnusteltu ${on}: ${felt}`,
    on: { board: 'laudasta', offcut: 'koepalasta' },
  },
};
