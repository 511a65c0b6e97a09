import type { screen as English } from '../en/screen.ts';

export const screen: typeof English = {
  title: 'Den här skärmen',
  light: 'Ljus',
  lights: {
    auto: 'Efter klockan',
    day: 'Dag',
    dusk: 'Skymning: varmt och dämpat',
    night: 'Natt: mörkt',
  },
  nightFrom: 'Natt från',
  nightUntil: 'Natt till',
  duskNote:
    'Två timmar före och efter natten är ljuset varmt och dämpat. Ljus över våta brädor drar till sig insekter.',
  turn: 'En sida av väggen visas i',
  turnSeconds: (seconds) => `${seconds} sekunder`,
  turnByHand: 'Tills någon bläddrar',
};
