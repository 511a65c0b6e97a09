import type { batch as English } from '../en/batch.ts';
import { plural } from '../plural.ts';

const capitalised = (words: string) => words.charAt(0).toLocaleUpperCase('nb') + words.slice(1);

const boards = (count: number) => plural('nb', count, { one: '# bord', other: '# bord' });

export const batch: typeof English = {
  cannotShow: 'Dette partiet kan ikke vises',
  verdict: 'Vurdering',
  stepByStep: 'Mal det steg for steg',
  printCard: 'Skriv ut kortet til reolen',
  report: 'Rapporten om dette partiet, til å skrive ut eller ta vare på',
  facts: {
    at: (place) => `på ${place}`,
    boards: (count, species) => `${boards(count)} av ${species}`,
    closed: 'avsluttet',
    recomputing: 'sene målinger regnes inn',
  },
  hero: {
    notSure: 'Vet ikke lenger',
    spoken: (sign, job) => `${capitalised(job)}: ${sign.toLocaleLowerCase('nb')}`,
    coat: (number, all, coat, stage) => `Strøk ${number} av ${all}, ${coat}: ${stage}.`,
    faces: (faces) => `På ${faces}.`,
    lastBoard: (moment) => ['Siste bord: ', moment, '.'],
    sum: (degreeHours, hours, at) => `${degreeHours}, like mye som ${hours} ved ${at}.`,
    gathered: (degreeHours, needed) =>
      `${degreeHours} samlet; å male igjen krever trolig ${needed}.`,
  },
  jobs: {
    title: 'Hva som kan gjøres med bordene',
    odds: (odds) => `Sjanse: ${odds}`,
    how: 'Slik kjenner du etter',
    exact: 'Nøyaktige tider',
    oddsColumn: 'Sjanse',
    by: 'Innen',
    needs: 'Krever',
    oneInTen: '1 av 10',
    oneInTwo: '1 av 2',
    nineInTen: '9 av 10',
    unknown: 'ukjent eller forbi',
    footnote:
      'Sjansene gjelder den tregeste tidelen av bordene. Til følertester har lært oss bedre, er det et arbeid krever, en antakelse å begynne med.',
  },
  helps: 'Hva som ville hjelpe',
  air: {
    title: (place) => `Luften på ${place}`,
    now: (temperature, humidity, dewPoint, word) => [
      `${temperature}, ${humidity}, duggpunkt ${dewPoint}. Luft: `,
      word,
      '.',
    ],
    apart: (difference) => `Sensorene her skiller ${difference}; den kaldeste av dem gjelder.`,
    apartInHumidity: (difference) =>
      `Sensorene her skiller ${difference} i fuktighet; den fuktigste av dem gjelder for dugg.`,
  },
  coats: {
    title: 'Strøk',
    name: (number, all, coat) => `${number} av ${all}: ${coat}`,
    used: (volume) => `${volume} brukt`,
    tin: (tin) => `boks ${tin}`,
    lastBoard: 'Siste bord',
    stage: 'Stadium',
    sum: 'Sum',
    lowToHigh: 'Lav til høy',
    range: (low, high) => `${low} til ${high}`,
    hoursAt: (temperature) => `Ved ${temperature}`,
    arrhenius: 'Etter Arrhenius',
    measured: 'Målt',
    gaps: 'Uten målinger',
    needs: 'Nytt strøk krever trolig',
    model: 'Modell',
    models: {
      'nurse-saul': (datum, gap) =>
        `temperatursum, nullpunkt ${datum}, hull over ${gap} telles ikke`,
      arrhenius: (gap) => `Arrhenius, hull over ${gap} telles ikke`,
    },
    byMistake: 'Notert ved en feil',
    byMistakeHow: 'Notert ved en feil? Det blir liggende, merket som trukket tilbake.',
    leave: 'La det være',
  },
  log: {
    title: 'Hva som er notert',
    nothing: 'Ingenting ennå. En følertest lærer mer enn noen tabell.',
    moved: (place) => `Flyttet til ${place}`,
    remark: (remark, text) => `${remark}: ${text}`,
    meter: (quantity, figures) => `${quantity}: ${figures}`,
    passed: (job, sum, on, felt) => `Klart til ${job} ved ${sum}, kjent på ${on}: ${felt}`,
    failed: (job, sum, on, felt) =>
      `Ikke klart til ${job} ennå ved ${sum}, kjent på ${on}: ${felt}`,
    on: { board: 'et bord', offcut: 'prøvebiten' },
  },
};
