import type { pin as English } from '../en/pin.ts';

export const pin: typeof English = {
  needed: 'Dafür ist die PIN nötig',
  keptUntilThen: 'Die Eingabe bleibt erhalten und wird nach der Anmeldung gesendet.',
  notNow: 'Jetzt nicht',
  label: 'PIN',
  device: 'Name dieses Geräts',
  deviceHint: 'Kann leer bleiben; er steht in der Liste der Geräte',
  logIn: 'Anmelden',
};
