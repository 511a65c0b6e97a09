/** What a screen is told on the page “More”: its light, and how its wall turns. */
export const screen = {
  title: 'This screen',
  light: 'Light',
  lights: {
    auto: 'By the clock',
    day: 'Day',
    dusk: 'Dusk: warm and dim',
    night: 'Night: dark',
  },
  nightFrom: 'Night from',
  nightUntil: 'Night until',
  duskNote:
    'Two hours before and after the night the light is warm and dim. Light over wet boards draws insects.',
  turn: 'A page of the wall stands for',
  turnSeconds: (seconds: string) => `${seconds} seconds`,
  turnByHand: 'Until someone turns it',
};
