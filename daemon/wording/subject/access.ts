import type { NeededRole } from '../../contract/role.ts';
import type { Nothing } from '../phrase.ts';

/** What stands in the way of a log-in or a change of what protects the site. */
export interface AccessSentences {
  'pin-too-short': Nothing;
  'pin-repeats': Nothing;
  'pin-in-a-row': Nothing;
  'pin-as-the-other': Nothing;
  'pin-wrong': Nothing;
  'pin-wrong/current': Nothing;
  'pin-not-set': Nothing;
  'pin-own-first': Nothing;
  'pin-first-from-here': Nothing;
  'pin-after-log-in': Nothing;
  'code-wrong/set-up': Nothing;
  'code-wrong/pairing': Nothing;
  'try-later': { seconds: number };
  'role-needed': { role: NeededRole };
  'not-open': Nothing;
  'not-from-here': Nothing;
  'no-broker-name': { name: string };
  'broker-elsewhere': Nothing;
  'broker-name-taken': { name: string };
  'broker-names-full': { names: number };
  'node-without-sensor': Nothing;
  'other-with-sensor': { kind: string };
  'sensors-would-fall-silent': { names: string[]; more: number };
  'listeners-would-fall-silent': { names: string[]; more: number };
  'too-many-pages': { pages: number };
  'too-many-requests': { perMinute: number; seconds: number };
  'asked-as': { host: string };
}
