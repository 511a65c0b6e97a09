import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

const boards = (count: number) => plural('en', count, { one: '# board', other: '# boards' });

/** What can be recorded of a batch, at the rack and with one thumb. */
export const actions = {
  /** Heading for those who hear the page. */
  label: 'What to record',
  /** On the buttons; short. */
  names: {
    touch: 'I felt it',
    coat: 'Record a coat',
    move: 'Moved',
    split: 'Some went',
    merge: 'Put together',
    remark: 'Remark',
    photo: 'Photo',
    meter: 'Hand meter',
    close: 'Close',
  },
  /** The same where it is what to do now. */
  next: {
    first: (coat: string) => `Record the first coat: ${coat}`,
    coat: (coat: string) => `Record the next coat: ${coat}`,
    move: 'Record where they went',
    sanded: 'Record that they are sanded',
  },
  kept: 'Kept on this device. It is sent as soon as the shed answers.',
  takeBack: 'Take it back',
  takenBack: 'Taken back: nothing was recorded.',
  /** A link to the list of what was not taken. */
  toCorrect: 'Look at it and correct it',
  /** Before it is recorded: the second tap. `answer` is “It lifts clean”. */
  confirm: (answer: string) => `Record: ${answer}`,
  touch: {
    notYet: 'Not yet',
    itIs: 'It is',
    where:
      'First on the witness offcut; then on the slowest board: bottom shelf, middle of the rack, a knot, a fat edge.',
    feltFor: 'Felt for',
    feltOn: 'Felt on',
    on: { board: 'a board', offcut: 'the offcut coated with it' },
    /** `job` as in “ready to stack”. */
    recordedPassed: (job: string) => `Recorded: felt whether it is ready ${job}; it is.`,
    recordedFailed: (job: string) => `Recorded: felt whether it is ready ${job}; not yet.`,
  },
  coat: {
    which: 'Which coat',
    /** “2 of 3: second coat” */
    ofPlan: (number: string, all: string, coat: string) => `${number} of ${all}: ${coat}`,
    /** “35 paint : 50 raw linseed oil; face, edges and ends” */
    planned: (mixture: string, faces: string) => `${mixture}; ${faces}`,
    lastBoard: 'The last board was done',
    tin: 'Out of which tin',
    tinNotSaid: 'not said',
    record: 'Record this coat',
    more: 'Paint used, colour, tin, faces',
    used: 'Used',
    colour: 'Colour',
    tinName: 'Tin',
    faces: 'Faces, if other than planned',
    recorded: (coat: string) => `Recorded: ${coat}. The clock runs.`,
    ragsSeen: 'The rags are seen to',
    /** After the link “The lock-up list of today”. */
    lockUp: (link: Node) => [link, ': until the rags are ticked there, they are told again.'],
    lockUpLink: 'The lock-up list of today',
    pots: 'Or: pots mixed',
    each: 'Mixed in each',
    lastLeft: 'The last one is still',
    fills: {
      0: 'empty',
      25: 'a quarter full',
      50: 'half full',
      75: 'three quarters full',
    },
  },
  move: {
    to: 'To',
    when: 'When',
    record: 'Record the move',
    recorded: (place: string) => `Recorded: the boards lie at ${place}.`,
    somewhere: 'another place',
    fromTheGround:
      'A wall: record from the ground, with both feet on it. Never from a ladder or a scaffold.',
  },
  split: {
    howMany: (all: string) => `How many of these ${all}`,
    wentTo: 'Went to',
    stayed: 'they stayed where they lie',
    name: 'Name of the new batch',
    nameHint: (batch: string) => `“${batch}, … boards” when left empty`,
    record: 'Split them off',
    recorded: (went: number, name: string, stayed: number) =>
      `Split off: ${boards(went)}, now “${name}”; ${boards(stayed)} stayed.`,
  },
  merge: {
    none: 'There is no other open batch.',
    which: 'Which boards come to these',
    hint: 'Only boards of the same timber, plan and coats. Their batch is closed by it.',
    option: (name: string, count: number, place: string) => `${name}, ${boards(count)} at ${place}`,
    record: 'Put them together',
    recorded: (count: number) =>
      `Together they are ${boards(count)} now. Verdicts speak for the slower of them.`,
  },
  remark: {
    what: 'What was it',
    text: 'In your words',
    record: 'Record the remark',
    recorded: (remark: string) => `Recorded: ${remark}.`,
  },
  photo: {
    label: 'Photo',
    chooseFirst: 'Take or choose a photo first.',
    unreadable: 'This file is no photo that this device can read.',
    shows: 'What it shows',
    keep: 'Keep the photo',
    kept: 'The photo is kept; it is in the report.',
  },
  meter: {
    shows: 'What the meter shows',
    /** “Wood moisture, %” */
    quantity: (name: string, unit: string) => `${name}, ${unit}`,
    board: (number: string) => `Board ${number}`,
    record: 'Record the figures',
    recorded: (count: number) =>
      plural('en', count, {
        one: 'Recorded: # figure from the meter.',
        other: 'Recorded: # figures from the meter.',
      }),
  },
  close: {
    leaves: 'It leaves the wall. All that was recorded stays, and it can be opened again.',
    comesBack: 'It comes back to the wall.',
    close: 'Close it',
    open: 'Open it again',
    closed: 'The batch is closed.',
    opened: 'The batch is open again.',
  },
};
