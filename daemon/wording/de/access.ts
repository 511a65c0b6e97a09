import type { Phrases } from '../phrase.ts';
import type { AccessSentences } from '../subject/access.ts';

const listed = ({ names, more }: AccessSentences['sensors-would-fall-silent']): string =>
  more > 0 ? `${names.join(', ')} und ${more} weitere` : names.join(', ');

/** What a device may do. */
const roles: Readonly<Record<string, string>> = {
  look: 'ansehen darf',
  operate: 'Arbeit eintragen darf',
  own: 'alles darf',
};

/** What a name at the broker is for. */
const uses: Readonly<Record<string, string>> = {
  node: 'Messwerte sendet',
  listener: 'nur zuhört',
  forecaster: 'eine Vorhersage sendet',
};

export const access: Phrases<AccessSentences> = {
  'pin-too-short': () => 'Die PIN ist zu kurz: Sie braucht mindestens 6 Ziffern oder Buchstaben.',
  'pin-repeats': () => 'Die PIN wiederholt sich: mindestens drei verschiedene Zeichen nehmen.',
  'pin-in-a-row': () => 'Die PIN ist eine Reihe wie 123456: die Ziffern mischen.',
  'pin-as-the-other': () => 'Die beiden PINs müssen sich unterscheiden.',
  'pin-wrong': () => 'Das ist nicht die PIN.',
  'pin-wrong/current': () => 'Die jetzige PIN stimmt nicht.',
  'pin-not-set': () => 'Es ist noch keine PIN gesetzt, mit der man sich anmelden könnte.',
  'pin-own-first': () => 'Zuerst kommt die PIN dessen, der die Anlage betreibt.',
  'pin-first-from-here': () =>
    'Die erste PIN wird vom Rechner selbst aus gesetzt oder mit dem Einrichtungscode.',
  'pin-after-log-in': () => 'PINs werden nach einer Anmeldung mit der PIN geändert.',
  'code-wrong/set-up': () => 'Das ist nicht der Einrichtungscode, oder er ist abgelaufen.',
  'code-wrong/pairing': () => 'Das ist kein Kopplungscode, oder er ist abgelaufen.',
  'try-later': ({ seconds }) => `Der nächste Versuch ist in ${seconds} Sekunden möglich.`,
  'role-needed': ({ role }) => `Dafür ist ein Gerät nötig, das ${roles[role] ?? role}.`,
  'not-open': () => 'Das steht nicht allen im Netz offen.',
  'not-from-here': () => 'Diese Anfrage kam nicht von dem Rechner, auf dem der Dienst läuft.',
  'no-broker-name': ({ name }) => `Am Broker gibt es keinen Namen ${name}.`,
  'broker-elsewhere': () =>
    'Die Sensoren sind an einem anderen Broker: Namen und Passwörter werden dort gesetzt.',
  'broker-name-taken': ({ name }) => `Der Name ${name} ist schon vergeben.`,
  'broker-names-full': ({ names }) => `Es gibt schon ${names} Namen.`,
  'node-without-sensor': () => 'Ein Knoten sendet als mindestens ein Sensor.',
  'other-with-sensor': ({ kind }) => `Ein Name, der ${uses[kind] ?? kind}, sendet als kein Sensor.`,
  'sensors-would-fall-silent': (told) => `Diese würden nicht mehr gehört: ${listed(told)}.`,
  'listeners-would-fall-silent': (told) =>
    `Diese Zuhörer würden nichts mehr hören: ${listed(told)}.`,
  'too-many-pages': ({ pages }) =>
    `Es hören schon ${pages} Seiten zu, so viele, wie http.maxStreams erlaubt.`,
  'too-many-requests': ({ perMinute, seconds }) =>
    `Beantwortet werden ${perMinute} Anfragen je Minute; die nächste in ${seconds} Sekunden.`,
  'asked-as': ({ host }) => `Er wurde unter „${host}“ angefragt.`,
};
