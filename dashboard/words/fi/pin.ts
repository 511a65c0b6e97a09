import type { pin as English } from '../en/pin.ts';

export const pin: typeof English = {
  needed: 'Tähän tarvitaan PIN-koodi',
  keptUntilThen: 'Kirjaamasi säilyy ja lähetetään, kun olet kirjautunut.',
  notNow: 'Ei nyt',
  label: 'PIN-koodi',
  device: 'Tämän laitteen nimi',
  deviceHint: 'Voi jättää pois; se näkyy laiteluettelossa',
  logIn: 'Kirjaudu',
};
