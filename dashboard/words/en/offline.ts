import type { Recordable } from '../../offline/entry.ts';

/** What was entered without a network, and what is shown without one. */
export const offline = {
  title: 'Waits to be sent',
  nothing: 'Nothing waits: all that was entered here has arrived.',
  how: 'It is kept on this device, also when the page is closed, and sent in this order when the shed answers. Leave it only once this list is empty.',
  keepsNothing:
    'This browser lets no page store anything: in a private window, or because the device is full. Without a network, leave a form open until it could be sent.',
  sendNow: 'Send now',
  why: {
    away: 'The shed does not answer.',
    pin: 'The PIN is needed. What was entered is kept meanwhile.',
    notFromHere: 'Changes are only taken from the computer itself for now.',
    otherwise: 'The daemon cannot take anything now. It is tried again.',
  },
  /** What was entered, in a list with the name of the batch. */
  names: {
    createTest: 'Touch test',
    createCoat: 'Coat',
    createRemark: 'Remark',
    createPhoto: 'Photo',
    createMove: 'Move',
    createReading: 'Hand meter',
    splitBatch: 'Boards split off',
    mergeBatch: 'Boards put together',
    changeBatch: 'Closed or opened again',
    tickMounting: 'Going up: a line ticked',
    beginCoating: 'Coat begun',
    tickCoating: 'Coat: a step ticked',
    endCoating: 'Coat finished',
  } satisfies Record<Recordable, string>,
  waits: 'waits',
  refused: 'not taken',
  heldUp: 'waits for the one before it',
  drop: 'Drop it',
  dropSure: 'Yes, drop it for good',
  sendAgain: 'Send it again',
  correct: {
    title: 'Correct it',
    fields: {
      at: 'When',
      finishedAt: 'The last board was done',
      begunAt: 'Begun',
      usedL: 'Used',
      text: 'In your words',
      name: 'Name',
      colour: 'Colour',
      tin: 'Tin',
      boards: 'How many boards',
      coat: 'Which coat, counted from 0',
    },
  },
  /** Over a batch that was last read then. */
  asOf: (moment: string) => `As of ${moment}. What came after is not known here.`,
  /** On the batch page, over what was entered here and has not arrived. */
  ofThisBatch: 'Entered here and not sent yet',
};
