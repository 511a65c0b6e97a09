import type { more as English } from '../en/more.ts';

export const more: typeof English = {
  title: 'Mehr',
  doors: {
    records: {
      name: 'Einträge',
      says: 'Alles, was eingetragen wurde, von allen Partien, zum Suchen',
    },
    season: { name: 'Die Jahreszeiten', says: 'Was aus den bisherigen Anstrichen wurde' },
    settings: {
      name: 'Einstellungen',
      says: 'Was eingestellt ist, woher es kommt und wie man es ändert',
    },
    topics: {
      name: 'Sensoren anderer Bauart',
      says: 'Nachrichten, die noch niemand kennt, und die Regeln, die daraus Messwerte machen',
    },
    firstRun: {
      name: 'Erste Schritte',
      says: 'Der geführte Weg durch das Einrichten und ein simulierter Schuppen zum Ausprobieren',
    },
    cautions: { name: 'Warnhinweise', says: 'Lappen, Dämpfe, Staub, Blei und Heizgeräte' },
    api: { name: 'API', says: 'Alle Routen, für alle, die Programme schreiben' },
  },
};
