import type { Phrases } from '../phrase.ts';
import type { AccessSentences } from '../subject/access.ts';

const listed = ({ names, more }: AccessSentences['sensors-would-fall-silent']): string =>
  more > 0 ? `${names.join(', ')} och ${more} till` : names.join(', ');

/** What a device may do. */
const roles: Readonly<Record<string, string>> = {
  look: 'får titta',
  operate: 'får anteckna arbete',
  own: 'får göra allt',
};

/** What a name at the broker is for. */
const uses: Readonly<Record<string, string>> = {
  node: 'skickar mätvärden',
  listener: 'bara lyssnar',
  forecaster: 'skickar en prognos',
};

export const access: Phrases<AccessSentences> = {
  'pin-too-short': () => 'PIN-koden är för kort: den behöver minst 6 siffror eller bokstäver.',
  'pin-repeats': () => 'PIN-koden upprepar sig: använd minst tre olika tecken.',
  'pin-in-a-row': () => 'PIN-koden är en följd som 123456: blanda siffrorna.',
  'pin-as-the-other': () => 'De två PIN-koderna måste vara olika.',
  'pin-wrong': () => 'Det här är inte PIN-koden.',
  'pin-wrong/current': () => 'Den nuvarande PIN-koden stämmer inte.',
  'pin-not-set': () => 'Ingen PIN-kod är vald än: det finns ingen att logga in med.',
  'pin-own-first': () => 'PIN-koden för den som driver anläggningen kommer först.',
  'pin-first-from-here': () =>
    'Den första PIN-koden väljs från själva datorn, eller med startkoden.',
  'pin-after-log-in': () => 'PIN-koder byts efter inloggning med PIN-koden.',
  'code-wrong/set-up': () => 'Det här är inte startkoden, eller så har den gått ut.',
  'code-wrong/pairing': () => 'Det här är ingen parkopplingskod, eller så har den gått ut.',
  'try-later': ({ seconds }) => `Nästa försök tas emot om ${seconds} sekunder.`,
  'role-needed': ({ role }) => `Det kräver en enhet som ${roles[role] ?? role}.`,
  'not-open': () => 'Det här är inte öppet för alla på nätet.',
  'not-from-here': () => 'Begäran kom inte från datorn som kör programmet.',
  'no-broker-name': ({ name }) => `MQTT-servern känner inget namn ${name}.`,
  'broker-elsewhere': () =>
    'Givarna är anslutna till en annan MQTT-server: namn och lösenord anges där.',
  'broker-name-taken': ({ name }) => `Namnet ${name} är redan utdelat.`,
  'broker-names-full': ({ names }) => `Det finns redan ${names} namn.`,
  'node-without-sensor': () => 'En nod skickar som minst en givare.',
  'other-with-sensor': ({ kind }) =>
    `Ett namn som ${uses[kind] ?? kind} skickar inte som någon givare.`,
  'sensors-would-fall-silent': (told) => `De här skulle inte längre höras: ${listed(told)}.`,
  'listeners-would-fall-silent': (told) =>
    `De här lyssnarna skulle inte höra något mer: ${listed(told)}.`,
  'too-many-pages': ({ pages }) =>
    `${pages} sidor lyssnar redan, så många som http.maxStreams tillåter.`,
  'too-many-requests': ({ perMinute, seconds }) =>
    `${perMinute} förfrågningar i minuten besvaras; nästa om ${seconds} sekunder.`,
  'asked-as': ({ host }) => `Den efterfrågades som ”${host}”.`,
};
