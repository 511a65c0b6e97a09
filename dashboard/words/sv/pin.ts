import type { pin as English } from '../en/pin.ts';

export const pin: typeof English = {
  needed: 'Här behövs PIN-koden',
  keptUntilThen: 'Det du skrev in är sparat och skickas när du har loggat in.',
  notNow: 'Inte nu',
  label: 'PIN-kod',
  device: 'Vad den här enheten heter',
  deviceHint: 'Kan utelämnas; det står i listan över enheter',
  logIn: 'Logga in',
};
