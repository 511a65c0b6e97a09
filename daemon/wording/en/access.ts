import type { Phrases } from '../phrase.ts';
import type { AccessSentences } from '../subject/access.ts';

const listed = ({ names, more }: AccessSentences['sensors-would-fall-silent']): string =>
  more > 0 ? `${names.join(', ')} and ${more} more` : names.join(', ');

export const access: Phrases<AccessSentences> = {
  'pin-too-short': () => 'The PIN is too short: it needs at least 6 figures or letters.',
  'pin-repeats': () => 'The PIN repeats itself: use at least three different signs.',
  'pin-in-a-row': () => 'The PIN is a row like 123456: mix its figures.',
  'pin-as-the-other': () => 'The two PINs have to differ.',
  'pin-wrong': () => 'This is not the PIN.',
  'pin-wrong/current': () => 'The current PIN is not right.',
  'pin-not-set': () => 'No PIN is set yet: there is none to log in with.',
  'pin-own-first': () => 'The PIN of whoever runs the site comes first.',
  'pin-first-from-here': () =>
    'The first PIN is set from the computer itself, or with the set-up code.',
  'pin-after-log-in': () => 'PINs are changed after a log-in with the PIN.',
  'code-wrong/set-up': () => 'This is not the set-up code, or it has run out.',
  'code-wrong/pairing': () => 'This is not a pairing code, or it has run out.',
  'try-later': ({ seconds }) => `The next try is taken in ${seconds} seconds.`,
  'role-needed': ({ role }) => `It takes the role "${role}".`,
  'not-open': () => 'This is not open to everyone on the network.',
  'not-from-here': () => 'This request did not come from the computer that runs the daemon.',
  'no-broker-name': ({ name }) => `There is no name ${name} at the broker.`,
  'broker-elsewhere': () => 'The sensors are at another broker: names and passwords are set there.',
  'broker-name-taken': ({ name }) => `The name ${name} is given already.`,
  'broker-names-full': ({ names }) => `There are ${names} names already.`,
  'node-without-sensor': () => 'A node publishes as at least one sensor.',
  'other-with-sensor': ({ kind }) => `A ${kind} publishes as no sensor.`,
  'sensors-would-fall-silent': (told) => `These would no longer be heard: ${listed(told)}.`,
  'listeners-would-fall-silent': (told) =>
    `These listeners would hear nothing more: ${listed(told)}.`,
  'too-many-pages': ({ pages }) =>
    `${pages} pages listen already, as many as http.maxStreams allows.`,
  'too-many-requests': ({ perMinute, seconds }) =>
    `${perMinute} requests a minute are answered; the next one in ${seconds} seconds.`,
  'asked-as': ({ host }) => `It was asked for as "${host}".`,
};
