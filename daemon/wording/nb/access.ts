import type { Phrases } from '../phrase.ts';
import type { AccessSentences } from '../subject/access.ts';

const listed = ({ names, more }: AccessSentences['sensors-would-fall-silent']): string =>
  more > 0 ? `${names.join(', ')} og ${more} til` : names.join(', ');

/** What a device may do. */
const roles: Readonly<Record<string, string>> = {
  look: 'kan se',
  operate: 'kan notere arbeid',
  own: 'kan gjøre alt',
};

/** What a name at the broker is for. */
const uses: Readonly<Record<string, string>> = {
  node: 'sender målinger',
  listener: 'bare lytter',
  forecaster: 'sender en prognose',
};

export const access: Phrases<AccessSentences> = {
  'pin-too-short': () => 'PIN-koden er for kort: den må ha minst 6 sifre eller bokstaver.',
  'pin-repeats': () => 'PIN-koden gjentar seg: bruk minst tre forskjellige tegn.',
  'pin-in-a-row': () => 'PIN-koden er en rekke som 123456: bland sifrene.',
  'pin-as-the-other': () => 'De to PIN-kodene må være forskjellige.',
  'pin-wrong': () => 'Dette er ikke PIN-koden.',
  'pin-wrong/current': () => 'Den nåværende PIN-koden stemmer ikke.',
  'pin-not-set': () => 'Ingen PIN-kode er valgt ennå: det finnes ingen å logge inn med.',
  'pin-own-first': () => 'PIN-koden til den som driver anlegget, kommer først.',
  'pin-first-from-here': () =>
    'Den første PIN-koden velges på selve datamaskinen, eller med startkoden.',
  'pin-after-log-in': () => 'PIN-koder byttes etter innlogging med PIN-koden.',
  'code-wrong/set-up': () => 'Dette er ikke startkoden, eller så har den gått ut.',
  'code-wrong/pairing': () => 'Dette er ingen paringskode, eller så har den gått ut.',
  'try-later': ({ seconds }) => `Neste forsøk tas imot om ${seconds} sekunder.`,
  'role-needed': ({ role }) => `Det krever en enhet som ${roles[role] ?? role}.`,
  'not-open': () => 'Dette er ikke åpent for alle på nettverket.',
  'not-from-here': () => 'Forespørselen kom ikke fra datamaskinen som kjører programmet.',
  'no-broker-name': ({ name }) => `MQTT-tjeneren kjenner ikke navnet ${name}.`,
  'broker-elsewhere': () =>
    'Sensorene er koblet til en annen MQTT-tjener: navn og passord settes der.',
  'broker-name-taken': ({ name }) => `Navnet ${name} er allerede i bruk.`,
  'broker-names-full': ({ names }) => `Det finnes allerede ${names} navn.`,
  'node-without-sensor': () => 'En node sender som minst én sensor.',
  'other-with-sensor': ({ kind }) =>
    `Et navn som ${uses[kind] ?? kind}, sender ikke som noen sensor.`,
  'sensors-would-fall-silent': (told) => `Disse ville ikke lenger bli hørt: ${listed(told)}.`,
  'listeners-would-fall-silent': (told) =>
    `Disse lytterne ville ikke høre noe mer: ${listed(told)}.`,
  'too-many-pages': ({ pages }) =>
    `${pages} sider lytter allerede, så mange som http.maxStreams tillater.`,
  'too-many-requests': ({ perMinute, seconds }) =>
    `${perMinute} forespørsler i minuttet besvares; den neste om ${seconds} sekunder.`,
  'asked-as': ({ host }) => `Det ble spurt etter «${host}».`,
};
