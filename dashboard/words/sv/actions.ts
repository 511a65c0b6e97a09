import type { actions as English } from '../en/actions.ts';
import { plural } from '../plural.ts';

const boards = (count: number) => plural('sv', count, { one: '# bräda', other: '# brädor' });

export const actions: typeof English = {
  label: 'Vad du kan anteckna',
  names: {
    touch: 'Jag kände',
    coat: 'Strykning',
    move: 'Flyttade',
    split: 'Några gick',
    merge: 'Slå ihop',
    remark: 'Anmärkning',
    photo: 'Foto',
    meter: 'Fuktmätare',
    close: 'Avsluta',
  },
  next: {
    first: (coat) => `Anteckna första strykningen: ${coat}`,
    coat: (coat) => `Anteckna nästa strykning: ${coat}`,
    move: 'Anteckna vart de flyttades',
    sanded: 'Anteckna att de är slipade',
  },
  kept: 'Sparat på den här enheten. Det skickas så snart boden svarar.',
  takeBack: 'Ångra',
  takenBack: 'Ångrat: ingenting antecknades.',
  toCorrect: 'Titta på det och rätta',
  confirm: (answer) => `Anteckna: ${answer}`,
  touch: {
    notYet: 'Inte än',
    itIs: 'Ja, klart',
    where:
      'Först på provbiten; sedan på den långsammaste brädan: understa hyllan, mitt i stället, en kvist, en fet kant.',
    feltFor: 'Kände inför',
    feltOn: 'Kände på',
    on: { board: 'en bräda', offcut: 'provbiten som ströks samtidigt' },
    recordedPassed: (job) => `Antecknat: kände om det är klart ${job}; det är det.`,
    recordedFailed: (job) => `Antecknat: kände om det är klart ${job}; inte än.`,
  },
  coat: {
    which: 'Vilken strykning',
    ofPlan: (number, all, coat) => `${number} av ${all}: ${coat}`,
    planned: (mixture, faces) => `${mixture}; ${faces}`,
    lastBoard: 'Sista brädan var klar',
    tin: 'Ur vilken burk',
    tinNotSaid: 'inte sagt',
    record: 'Anteckna den här strykningen',
    more: 'Färgåtgång, kulör, burk, sidor',
    used: 'Åtgång',
    colour: 'Kulör',
    tinName: 'Burk',
    faces: 'Sidor, om andra än planerat',
    recorded: (coat) => `Antecknat: ${coat}. Klockan går.`,
    ragsSeen: 'Trasorna är omhändertagna',
    lockUp: (link) => [link, ': tills trasorna är avprickade där påminns du om dem.'],
    lockUpLink: 'Dagens lista för stängning',
    pots: 'Eller: blandade burkar',
    each: 'Blandat i var och en',
    lastLeft: 'Den sista är fortfarande',
    fills: {
      0: 'tom',
      25: 'full till en fjärdedel',
      50: 'halvfull',
      75: 'full till tre fjärdedelar',
    },
  },
  move: {
    to: 'Till',
    when: 'När',
    record: 'Anteckna flytten',
    recorded: (place) => `Antecknat: brädorna ligger på ${place}.`,
    somewhere: 'en annan plats',
    fromTheGround:
      'En vägg: anteckna från marken, med båda fötterna på den. Aldrig från en stege eller ställning.',
  },
  split: {
    howMany: (all) => `Hur många av dessa ${all}`,
    wentTo: 'Gick till',
    stayed: 'de ligger kvar där de ligger',
    name: 'Det nya partiets namn',
    nameHint: (batch) => `”${batch}, … brädor” om det lämnas tomt`,
    record: 'Dela av dem',
    recorded: (went, name, stayed) =>
      `Avdelat: ${boards(went)}, nu ”${name}”; ${boards(stayed)} är kvar.`,
  },
  merge: {
    none: 'Det finns inget annat öppet parti.',
    which: 'Vilka brädor som läggs till de här',
    hint: 'Bara brädor av samma virke, plan och strykningar. Deras parti avslutas därmed.',
    option: (name, count, place) => `${name}, ${boards(count)} på ${place}`,
    record: 'Slå ihop dem',
    recorded: (count) =>
      `Tillsammans är de nu ${boards(count)}. Beskeden gäller de långsammare av dem.`,
  },
  remark: {
    what: 'Vad var det',
    text: 'Med egna ord',
    record: 'Anteckna anmärkningen',
    recorded: (remark) => `Antecknat: ${remark}.`,
  },
  photo: {
    label: 'Foto',
    chooseFirst: 'Ta eller välj ett foto först.',
    unreadable: 'Filen är inget foto som den här enheten kan läsa.',
    shows: 'Vad det visar',
    keep: 'Spara fotot',
    kept: 'Fotot är sparat; det finns i rapporten.',
  },
  meter: {
    shows: 'Vad mätaren visar',
    quantity: (name, unit) => `${name}, ${unit}`,
    board: (number) => `Bräda ${number}`,
    record: 'Anteckna värdena',
    recorded: (count) =>
      plural('sv', count, {
        one: 'Antecknat: # värde från mätaren.',
        other: 'Antecknat: # värden från mätaren.',
      }),
  },
  close: {
    leaves: 'Det försvinner från väggen. Allt som antecknats är kvar, och det kan öppnas igen.',
    comesBack: 'Det kommer tillbaka till väggen.',
    close: 'Avsluta det',
    open: 'Öppna det igen',
    closed: 'Partiet är avslutat.',
    opened: 'Partiet är öppet igen.',
  },
};
