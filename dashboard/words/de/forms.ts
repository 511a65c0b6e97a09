import type { forms as English } from '../en/forms.ts';

export const forms: typeof English = {
  when: {
    justNow: 'Gerade eben',
    another: 'Zu einer anderen Zeit',
    dateAndTime: 'Datum und Uhrzeit',
    incomplete: 'braucht ein Datum mit vierstelliger Jahreszahl und eine Uhrzeit',
  },
  closed: (choosePin) => [
    'Änderungen werden vorerst nur vom Rechner selbst angenommen: diese Seite dort öffnen oder ',
    choosePin,
    '.',
  ],
  choosePin: 'eine PIN wählen',
  besideFields: {
    title: 'Etwas passt nicht',
    look: 'Die markierten Felder ansehen: Was falsch ist, steht darunter.',
  },
  problems: {
    AWAY: {
      title: 'Der Dienst antwortet nicht',
      detail: 'Es kam nichts zurück; vielleicht wurde nichts eingetragen.',
      doThis: 'Nachsehen, ob der Rechner im Schuppen an und im Netz ist, dann noch einmal senden.',
    },
    UNREADABLE: {
      title: 'Die Antwort war nicht zu lesen',
      detail: 'Etwas anderes als der Dienst hat geantwortet.',
      doThis: 'Die Adresse dieser Seite prüfen.',
    },
    NOT_KEPT: {
      title: 'Nicht gesendet, und dieses Gerät kann nichts behalten',
      detail:
        'Der Dienst antwortet nicht, und dieser Browser lässt keine Seite etwas speichern: in einem privaten Fenster oder weil das Gerät voll ist.',
      doThis:
        'Diese Seite offen lassen, wie sie ist, und noch einmal senden, wenn das Netz wieder da ist.',
    },
  },
};
