import type { print as English } from '../en/print.ts';

export const print: typeof English = {
  print: 'Skriv ut',
  phone: {
    address: 'Adressen telefoner når denne datamaskinen på',
    notFollowed: (example) =>
      `En telefon når ikke denne adressen: skriv navnet eller nummeret til datamaskinen på nettet, for eksempel ${example}.`,
    code: 'QR-kode som fører til siden for disse bordene',
  },
  mixture: 'Blanding',
  card: 'Kort',
  cardNotDrawn: 'Kortet kan ikke tegnes',
  door: {
    title: 'Kort til døren',
    how: {
      metric: 'A4 stående. Heng det i øyehøyde på innsiden av den døren som låses sist.',
      us: 'Letter, stående. Heng det i øyehøyde på innsiden av den døren som låses sist.',
    },
    name: 'Før du låser',
    when: 'Hver dag med maling, oljing eller sliping. Et kryss beviser ingenting: se på det, ta på det.',
    line: (title, text) => [title, ' ', text],
    fire: 'Røyk eller brannlukt: alle ut, lukk døren, ring brannvesenet: ____________. Adressen vår: ____________________________',
    foot: 'Vanlig praksis; lokale forskrifter og malingsprodusentens anvisninger går foran.',
  },
  label: {
    title: 'Etikett til spannet',
    notDrawn: 'Etiketten kan ikke tegnes',
    how: (size) => `${size}. Klipp den ut og fest den med klar teip, før spannet er vått utvendig.`,
    label: 'Etikett',
    forBoards: 'til ________________',
    share: (part, percent) => `${part} ${percent}`,
    colour: 'Farge ________________',
    mixed: (date) => `Blandet ${date}`,
    mind: 'Rør fra bunnen. Hold lukket, borte fra ild, innelåst for barn. Fillene selvantenner: i vann under lokk. Farlig avfall.',
  },
  rack: {
    title: 'Kort til reolen',
    how: {
      metric:
        'A5 liggende. Heng det der et vått bord ikke kan komme borti det; koden åpner siden for disse bordene på en telefon.',
      us: 'Et halvt Letter-ark, liggende. Heng det der et vått bord ikke kan komme borti det; koden åpner siden for disse bordene på en telefon.',
    },
    boards: (count, species, surface, size) => `${count} × ${species}, ${surface}, ${size}`,
    coat: 'Strøk',
    mixture: 'Blanding',
    lastBoardDone: 'Siste bord ferdig',
    feltDry: 'Kjent tørt',
    foot: 'Vått: ikke rør annet enn for å kjenne etter. Oljefiller selvantenner.',
  },
  strip: {
    title: 'Remse til rørepinnen',
    notDrawn: 'Remsen kan ikke tegnes',
    noWidth: (back) => ['Ingen har sagt hvor vidt spannet er. ', back],
    back: 'Tilbake til spannet',
    how: (line) =>
      `Skriv ut i 100 %, ikke tilpasset siden, og hold en linjal mot streken på ${line} før du klipper. Foten av remsen står på bunnen av spannet.`,
    tooLong: {
      metric: (length) =>
        `Remsen er ${length} lang og får ikke plass på et A4-ark: ta et videre spann eller bland mindre om gangen.`,
      us: (length) =>
        `Remsen er ${length} lang og får ikke plass på et Letter-ark: ta et videre spann eller bland mindre om gangen.`,
    },
    mark: (part, figure) => `${part} ${figure}`,
    spoken: (marks, unit) => `Remse med merker ved ${marks} ${unit}`,
    checkSpoken: (length) => `En strek på ${length} å måle mot`,
    check: (length) => `denne streken er ${length} lang`,
  },
};
