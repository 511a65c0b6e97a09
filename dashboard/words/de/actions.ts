import type { actions as English } from '../en/actions.ts';
import { plural } from '../plural.ts';

const boards = (count: number) => plural('de', count, { one: '# Brett', other: '# Bretter' });

export const actions: typeof English = {
  label: 'Was einzutragen ist',
  names: {
    touch: 'Angefasst',
    coat: 'Anstrich',
    move: 'Umgelegt',
    split: 'Ein Teil ging',
    merge: 'Vereinen',
    remark: 'Bemerkung',
    photo: 'Foto',
    meter: 'Handmessgerät',
    close: 'Abschließen',
  },
  next: {
    first: (coat) => `Den ersten Anstrich eintragen: ${coat}`,
    coat: (coat) => `Den nächsten Anstrich eintragen: ${coat}`,
    move: 'Eintragen, wohin sie kamen',
    sanded: 'Eintragen, dass sie geschliffen sind',
  },
  kept: 'Auf diesem Gerät behalten. Es wird gesendet, sobald der Schuppen antwortet.',
  takeBack: 'Zurücknehmen',
  takenBack: 'Zurückgenommen: Es wurde nichts eingetragen.',
  toCorrect: 'Ansehen und berichtigen',
  confirm: (answer) => `Eintragen: ${answer}`,
  touch: {
    notYet: 'Noch nicht',
    itIs: 'Ja',
    where:
      'Zuerst am Probestück; dann am langsamsten Brett: unterste Lage, Mitte des Gestells, ein Ast, eine fette Kante.',
    feltFor: 'Angefasst für',
    feltOn: 'Wo angefasst',
    on: { board: 'an einem Brett', offcut: 'am mitgestrichenen Probestück' },
    recordedPassed: (job) => `Eingetragen: angefasst, ob es bereit ist ${job}; es ist bereit.`,
    recordedFailed: (job) => `Eingetragen: angefasst, ob es bereit ist ${job}; noch nicht.`,
  },
  coat: {
    which: 'Welcher Anstrich',
    ofPlan: (number, all, coat) => `${number} von ${all}: ${coat}`,
    planned: (mixture, faces) => `${mixture}; ${faces}`,
    lastBoard: 'Das letzte Brett war fertig',
    tin: 'Aus welcher Dose',
    tinNotSaid: 'keine Angabe',
    record: 'Diesen Anstrich eintragen',
    more: 'Verbrauch, Farbton, Dose, Seiten',
    used: 'Verbraucht',
    colour: 'Farbton',
    tinName: 'Dose',
    faces: 'Seiten, falls anders als geplant',
    recorded: (coat) => `Eingetragen: ${coat}. Die Uhr läuft.`,
    ragsSeen: 'Um die Lappen ist gekümmert',
    lockUp: (link) => [link, ': Bis die Lappen dort abgehakt sind, wird wieder an sie erinnert.'],
    lockUpLink: 'Die Feierabendliste von heute',
    pots: 'Oder: angemischte Töpfe',
    each: 'In jedem angemischt',
    lastLeft: 'Der letzte ist noch',
    fills: {
      0: 'leer',
      25: 'ein Viertel voll',
      50: 'halb voll',
      75: 'drei Viertel voll',
    },
  },
  move: {
    to: 'Wohin',
    when: 'Wann',
    record: 'Umlegen eintragen',
    recorded: (place) => `Eingetragen: Die Bretter liegen hier: ${place}.`,
    somewhere: 'ein anderer Platz',
    fromTheGround:
      'Eine Hauswand: vom Boden aus eintragen, mit beiden Füßen darauf. Nie von einer Leiter oder einem Gerüst.',
  },
  split: {
    howMany: (all) => `Wie viele von diesen: ${all}`,
    wentTo: 'Kamen nach',
    stayed: 'sie blieben, wo sie liegen',
    name: 'Name der neuen Partie',
    nameHint: (batch) => `„${batch}, … Bretter“, wenn leer gelassen`,
    record: 'Abteilen',
    recorded: (went, name, stayed) =>
      `Abgeteilt: ${boards(went)}, jetzt „${name}“; geblieben: ${boards(stayed)}.`,
  },
  merge: {
    none: 'Es gibt keine andere offene Partie.',
    which: 'Welche Bretter kommen zu diesen',
    hint: 'Nur Bretter von gleichem Holz, Plan und gleichen Anstrichen. Ihre Partie wird dadurch abgeschlossen.',
    option: (name, count, place) => `${name}, ${boards(count)}, ${place}`,
    record: 'Vereinen',
    recorded: (count) =>
      `Zusammen sind es jetzt ${boards(count)}. Das Urteil gilt für die langsameren davon.`,
  },
  remark: {
    what: 'Was war es',
    text: 'In Ihren Worten',
    record: 'Bemerkung eintragen',
    recorded: (remark) => `Eingetragen: ${remark}.`,
  },
  photo: {
    label: 'Foto',
    chooseFirst: 'Zuerst ein Foto machen oder auswählen.',
    unreadable: 'Diese Datei ist kein Foto, das dieses Gerät lesen kann.',
    shows: 'Was es zeigt',
    keep: 'Foto behalten',
    kept: 'Das Foto ist gespeichert; es steht im Bericht.',
  },
  meter: {
    shows: 'Was das Messgerät zeigt',
    quantity: (name, unit) => `${name}, ${unit}`,
    board: (number) => `Brett ${number}`,
    record: 'Werte eintragen',
    recorded: (count) =>
      plural('de', count, {
        one: 'Eingetragen: # Wert vom Messgerät.',
        other: 'Eingetragen: # Werte vom Messgerät.',
      }),
  },
  close: {
    leaves:
      'Sie verschwindet von der Wand. Alles Eingetragene bleibt, und sie lässt sich wieder öffnen.',
    comesBack: 'Sie kommt zurück an die Wand.',
    close: 'Abschließen',
    open: 'Wieder öffnen',
    closed: 'Die Partie ist abgeschlossen.',
    opened: 'Die Partie ist wieder offen.',
  },
};
