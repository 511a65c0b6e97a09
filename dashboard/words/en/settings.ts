import type { ListedSetting } from '../../../daemon/contract/setting.ts';
import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

/** Every setting in force. What each does stands in `setting-descriptions.ts` of a language. */
export const settings = {
  title: 'Settings',
  says: 'What is in force, and where it came from. What concerns the work is changed here; who may come in, addresses and files are changed in the file on the computer itself.',
  file: (name: Node) => ['The settings file is ', name, '.'],
  noFile: (flag: Node) => [
    'There is no settings file: everything is at its default, or was given at the start. One is named with ',
    flag,
    '.',
  ],
  reload: (command: Node) => [
    'What holds at once is taken in by ',
    command,
    '; the rest with the next start.',
  ],
  search: 'Words to look for',
  sections: 'Sections',
  top: 'At the top',
  changed: 'Not at their defaults',
  none: 'No setting fits.',
  count: (number: number) => plural('en', number, { one: '# setting', other: '# settings' }),
  value: 'In force',
  hidden: 'set, and told to nobody',
  nothing: 'nothing',
  yes: 'yes',
  no: 'no',
  from: {
    default: 'the default',
    file: 'from the file',
    chosen: 'chosen here',
    environment: 'from the environment',
    flag: 'given at the start',
  } satisfies Record<ListedSetting['from'], string>,
  /** Where exactly: file and line, variable, or flag. */
  inLine: (file: string, line: string) => `${file}, line ${line}`,
  default: 'Default',
  takes: 'Takes',
  /** Units that are words, by what the daemon calls them. */
  units: { bytes: 'bytes', '% of oven-dry mass': '% of oven-dry mass' },
  kinds: {
    text: 'text',
    number: 'a number',
    'whole-number': 'a whole number',
    'yes-or-no': 'true or false',
    choice: 'one of',
    list: 'a list',
    table: 'a table',
  } satisfies Record<ListedSetting['takes'], string>,
  between: (kind: string, least: string, most: string) => `${kind} from ${least} to ${most}`,
  atLeast: (kind: string, least: string) => `${kind}, at least ${least}`,
  atMost: (kind: string, most: string) => `${kind}, at most ${most}`,
  oneOf: (choices: string) => `one of: ${choices}`,
  holds: {
    'at-once': 'A change here holds at once; one in the file as soon as the daemon reads it anew.',
    'next-start': 'A change holds from the next start on.',
  } satisfies Record<ListedSetting['holds'], string>,
  waits: (value: string) => `It was changed since: from the next start on it is ${value}.`,
  change: 'Change',
  changeIt: (name: string) => `Change ${name}`,
  newValue: { 'at-once': 'From now on', 'next-start': 'From the next start on' } satisfies Record<
    ListedSetting['holds'],
    string
  >,
  valueOrNothing: 'What it is to have',
  has: { value: 'A value', nothing: 'Nothing' },
  keep: 'Keep it',
  backTo: {
    default: (value: string) => `Back to the default: ${value}`,
    file: (value: string) => `Back to the file: ${value}`,
  } satisfies Record<ListedSetting['otherwiseFrom'], (value: string) => string>,
  kept: {
    'at-once': 'Kept. It holds now.',
    'next-start': 'Kept. It holds from the next start on.',
  } satisfies Record<ListedSetting['holds'], string>,
  byHand: 'This one is changed in the file on the computer itself, and not here.',
  atStart: (given: Node) => [
    'It was given at the start by ',
    given,
    ', which goes before the file and before what is chosen here. To change it, take that away or give another value, and start the daemon again.',
  ],
  chosenAt: (when: string) => `Chosen here: ${when}.`,
  chosenAtBy: (when: string, device: string) => `Chosen here: ${when}, at ${device}.`,
  aside: 'Chosen here, and not in force',
  letGo: 'Let go of it',
  letGoOf: (name: string) => `Let go of what was chosen for ${name}`,
  entry: (number: string) => `Entry ${number}`,
  another: 'Another entry',
  emptyOut: 'What is left empty is left out.',
  lines: 'For the settings file',
};
