import type { pin as English } from '../en/pin.ts';

export const pin: typeof English = {
  needed: 'Her trengs PIN-koden',
  keptUntilThen: 'Det du skrev inn, er lagret og sendes når du har logget inn.',
  notNow: 'Ikke nå',
  label: 'PIN-kode',
  device: 'Hva denne enheten heter',
  deviceHint: 'Kan utelates; det står i listen over enheter',
  logIn: 'Logg inn',
};
