import type { screen as English } from '../en/screen.ts';

export const screen: typeof English = {
  title: 'Denne skjermen',
  light: 'Lys',
  lights: {
    auto: 'Etter klokken',
    day: 'Dag',
    dusk: 'Skumring: varmt og dempet',
    night: 'Natt: mørkt',
  },
  nightFrom: 'Natt fra',
  nightUntil: 'Natt til',
  duskNote:
    'To timer før og etter natten er lyset varmt og dempet. Lys over våte bord trekker til seg insekter.',
  turn: 'En side av veggen vises i',
  turnSeconds: (seconds) => `${seconds} sekunder`,
  turnByHand: 'Til noen blar',
};
