import type { print as English } from '../en/print.ts';

export const print: typeof English = {
  print: 'Skriv ut',
  phone: {
    address: 'Adress som telefoner når den här datorn på',
    notFollowed: (example) =>
      `En telefon når inte den här adressen: skriv datorns namn eller nummer på nätet, till exempel ${example}.`,
    code: 'QR-kod som leder till de här brädornas sida',
  },
  mixture: 'Blandning',
  card: 'Kort',
  cardNotDrawn: 'Kortet kan inte ritas',
  door: {
    title: 'Kort till dörren',
    how: {
      metric: 'A4 stående. Häng det i ögonhöjd på insidan av den dörr som låses sist.',
      us: 'Letter, stående. Häng det i ögonhöjd på insidan av den dörr som låses sist.',
    },
    name: 'Innan du låser',
    when: 'Varje dag med målning, oljning eller slipning. En bock bevisar ingenting: titta, känn.',
    line: (title, text) => [title, ' ', text],
    fire: 'Rök eller brandlukt: alla ut, stäng dörren, ring räddningstjänsten: ____________. Vår adress: ____________________________',
    foot: 'Allmän praxis; lokala föreskrifter och färgtillverkarens anvisningar går före.',
  },
  label: {
    title: 'Etikett till burken',
    notDrawn: 'Etiketten kan inte ritas',
    how: (size) =>
      `${size}. Klipp ut den och tejpa fast den med klar tejp, innan burken är våt utanpå.`,
    label: 'Etikett',
    forBoards: 'till ________________',
    share: (part, percent) => `${part} ${percent}`,
    colour: 'Kulör ________________',
    mixed: (date) => `Blandad ${date}`,
    mind: 'Rör om från botten. Håll stängd, borta från eld, inlåst för barn. Trasorna självantänder: i vatten under lock. Farligt avfall.',
  },
  rack: {
    title: 'Kort till stället',
    how: {
      metric:
        'A5 liggande. Häng det där en våt bräda inte kan röra vid det; koden öppnar de här brädornas sida i en telefon.',
      us: 'Ett halvt Letter-ark, liggande. Häng det där en våt bräda inte kan röra vid det; koden öppnar de här brädornas sida i en telefon.',
    },
    boards: (count, species, surface, size) => `${count} × ${species}, ${surface}, ${size}`,
    coat: 'Strykning',
    mixture: 'Blandning',
    lastBoardDone: 'Sista brädan klar',
    feltDry: 'Känts torr',
    foot: 'Vått: rör inte annat än för att känna efter. Oljiga trasor självantänder.',
  },
  strip: {
    title: 'Remsa till rörpinnen',
    notDrawn: 'Remsan kan inte ritas',
    noWidth: (back) => ['Ingen har sagt hur vid burken är. ', back],
    back: 'Tillbaka till burken',
    how: (line) =>
      `Skriv ut i 100 %, inte anpassat till sidan, och lägg en linjal mot linjen på ${line} innan du klipper. Remsans fot står på burkens botten.`,
    tooLong: {
      metric: (length) =>
        `Remsan är ${length} lång och får inte plats på ett A4: ta en vidare burk eller blanda mindre åt gången.`,
      us: (length) =>
        `Remsan är ${length} lång och får inte plats på ett Letter-ark: ta en vidare burk eller blanda mindre åt gången.`,
    },
    mark: (part, figure) => `${part} ${figure}`,
    spoken: (marks, unit) => `Remsa med märken vid ${marks} ${unit}`,
    checkSpoken: (length) => `En linje på ${length} att mäta mot`,
    check: (length) => `den här linjen är ${length} lång`,
  },
};
