import type { actions as English } from '../en/actions.ts';
import { plural } from '../plural.ts';

const boards = (count: number) => plural('nb', count, { one: '# bord', other: '# bord' });

export const actions: typeof English = {
  label: 'Hva du kan notere',
  names: {
    touch: 'Jeg kjente',
    coat: 'Noter strøk',
    move: 'Flyttet',
    split: 'Noen gikk',
    merge: 'Slå sammen',
    remark: 'Merknad',
    photo: 'Foto',
    meter: 'Fuktmåler',
    close: 'Avslutt',
  },
  next: {
    first: (coat) => `Noter det første strøket: ${coat}`,
    coat: (coat) => `Noter neste strøk: ${coat}`,
    move: 'Noter hvor de ble flyttet',
    sanded: 'Noter at de er slipt',
  },
  kept: 'Lagret på denne enheten. Det sendes så snart boden svarer.',
  takeBack: 'Angre',
  takenBack: 'Angret: ingenting ble notert.',
  toCorrect: 'Se på det og rett det',
  confirm: (answer) => `Noter: ${answer}`,
  touch: {
    notYet: 'Ikke ennå',
    itIs: 'Ja, klart',
    where:
      'Først på prøvebiten; så på det tregeste bordet: nederste hylle, midt i reolen, en kvist, en feit kant.',
    feltFor: 'Kjente etter for',
    feltOn: 'Kjente på',
    on: { board: 'et bord', offcut: 'prøvebiten som ble malt samtidig' },
    recordedPassed: (job) => `Notert: kjente om det er klart til ${job}; det er det.`,
    recordedFailed: (job) => `Notert: kjente om det er klart til ${job}; ikke ennå.`,
  },
  coat: {
    which: 'Hvilket strøk',
    ofPlan: (number, all, coat) => `${number} av ${all}: ${coat}`,
    planned: (mixture, faces) => `${mixture}; ${faces}`,
    lastBoard: 'Siste bord var ferdig',
    tin: 'Fra hvilken boks',
    tinNotSaid: 'ikke sagt',
    record: 'Noter dette strøket',
    more: 'Malingsforbruk, farge, boks, sider',
    used: 'Forbruk',
    colour: 'Farge',
    tinName: 'Boks',
    faces: 'Sider, om andre enn planlagt',
    recorded: (coat) => `Notert: ${coat}. Klokken går.`,
    ragsSeen: 'Fillene er tatt hånd om',
    lockUp: (link) => [link, ': til fillene er krysset av der, blir du minnet om dem.'],
    lockUpLink: 'Dagens stengeliste',
    pots: 'Eller: blandede spann',
    each: 'Blandet i hvert',
    lastLeft: 'Det siste er fortsatt',
    fills: {
      0: 'tomt',
      25: 'en firedel fullt',
      50: 'halvfullt',
      75: 'tre firedeler fullt',
    },
  },
  move: {
    to: 'Til',
    when: 'Når',
    record: 'Noter flyttingen',
    recorded: (place) => `Notert: bordene ligger på ${place}.`,
    somewhere: 'et annet sted',
    fromTheGround:
      'En vegg: noter fra bakken, med begge føttene på den. Aldri fra en stige eller et stillas.',
  },
  split: {
    howMany: (all) => `Hvor mange av disse ${all}`,
    wentTo: 'Gikk til',
    stayed: 'de ble liggende der de ligger',
    name: 'Navnet på det nye partiet',
    nameHint: (batch) => `«${batch}, … bord» om det står tomt`,
    record: 'Skill dem ut',
    recorded: (went, name, stayed) =>
      `Skilt ut: ${boards(went)}, nå «${name}»; ${boards(stayed)} ble igjen.`,
  },
  merge: {
    none: 'Det finnes ikke noe annet åpent parti.',
    which: 'Hvilke bord som kommer til disse',
    hint: 'Bare bord av samme treslag, plan og strøk. Partiet deres avsluttes dermed.',
    option: (name, count, place) => `${name}, ${boards(count)} på ${place}`,
    record: 'Slå dem sammen',
    recorded: (count) =>
      `Til sammen er de nå ${boards(count)}. Vurderingene gjelder de tregeste av dem.`,
  },
  remark: {
    what: 'Hva var det',
    text: 'Med egne ord',
    record: 'Noter merknaden',
    recorded: (remark) => `Notert: ${remark}.`,
  },
  photo: {
    label: 'Foto',
    chooseFirst: 'Ta eller velg et foto først.',
    unreadable: 'Denne filen er ikke et foto som enheten kan lese.',
    shows: 'Hva det viser',
    keep: 'Lagre fotoet',
    kept: 'Fotoet er lagret; det står i rapporten.',
  },
  meter: {
    shows: 'Hva måleren viser',
    quantity: (name, unit) => `${name}, ${unit}`,
    board: (number) => `Bord ${number}`,
    record: 'Noter tallene',
    recorded: (count) =>
      plural('nb', count, {
        one: 'Notert: # tall fra måleren.',
        other: 'Notert: # tall fra måleren.',
      }),
  },
  close: {
    leaves: 'Det forsvinner fra veggen. Alt som er notert, blir værende, og det kan åpnes igjen.',
    comesBack: 'Det kommer tilbake på veggen.',
    close: 'Avslutt det',
    open: 'Åpne det igjen',
    closed: 'Partiet er avsluttet.',
    opened: 'Partiet er åpent igjen.',
  },
};
