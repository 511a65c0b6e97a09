import type { screen as English } from '../en/screen.ts';

export const screen: typeof English = {
  title: 'Tämä näyttö',
  light: 'Valo',
  lights: {
    auto: 'Kellon mukaan',
    day: 'Päivä',
    dusk: 'Hämärä: lämmin ja himmeä',
    night: 'Yö: tumma',
  },
  nightFrom: 'Yö alkaa',
  nightUntil: 'Yö päättyy',
  duskNote:
    'Kaksi tuntia ennen yötä ja sen jälkeen valo on lämmin ja himmeä. Valo märkien lautojen yllä houkuttelee hyönteisiä.',
  turn: 'Taulun sivu näkyy',
  turnSeconds: (seconds) => `${seconds} sekuntia`,
  turnByHand: 'Kunnes joku kääntää sen',
};
