import type { Node } from '../node.ts';

/** What all forms say. */
export const forms = {
  when: {
    justNow: 'Just now',
    another: 'At another time',
    dateAndTime: 'Date and time',
    incomplete: 'needs a date, with a year of four digits, and a time',
  },
  /** Why nothing can be changed from here; `choosePin` is a link. */
  closed: (choosePin: Node) => [
    'Changes are only taken from the computer itself for now: open this page there, or ',
    choosePin,
    '.',
  ],
  choosePin: 'choose a PIN',
  /** Where each fault stands with its field. */
  besideFields: {
    title: 'Something does not fit',
    look: 'Look at the marked fields: what is wrong stands below each.',
  },
  /** What the page itself has to say of a sending that failed. */
  problems: {
    AWAY: {
      title: 'The daemon does not answer',
      detail: 'Nothing came back, so it may not have been recorded.',
      doThis: 'Look whether the computer in the shed is on and on the network, then send it again.',
    },
    UNREADABLE: {
      title: 'The answer could not be read',
      detail: 'Something other than the daemon answered.',
      doThis: 'Check the address of this page.',
    },
    NOT_KEPT: {
      title: 'Not sent, and this device can keep nothing',
      detail:
        'The daemon does not answer, and this browser lets no page store anything: in a private window, or because the device is full.',
      doThis: 'Leave this page open as it is, and send it again when the network is back.',
    },
  },
};
