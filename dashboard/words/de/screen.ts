import type { screen as English } from '../en/screen.ts';

export const screen: typeof English = {
  title: 'Dieser Bildschirm',
  light: 'Licht',
  lights: {
    auto: 'Nach der Uhr',
    day: 'Tag',
    dusk: 'Dämmerung: warm und gedämpft',
    night: 'Nacht: dunkel',
  },
  nightFrom: 'Nacht von',
  nightUntil: 'Nacht bis',
  duskNote:
    'Zwei Stunden vor und nach der Nacht ist das Licht warm und gedämpft. Licht über nassen Brettern zieht Insekten an.',
  turn: 'Eine Seite der Wand bleibt stehen',
  turnSeconds: (seconds) => `${seconds} Sekunden`,
  turnByHand: 'Bis jemand weiterblättert',
};
