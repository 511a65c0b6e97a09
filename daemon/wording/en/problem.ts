import type { Phrases } from '../phrase.ts';
import type { ProblemSentences } from '../subject/problem.ts';

export const problem: Phrases<ProblemSentences> = {
  'problem-title/BC_REQUEST_INVALID': () => 'The request has a field that does not fit',
  'problem-to-do/BC_REQUEST_INVALID': () =>
    'Correct the fields listed under errors and send it again.',
  'problem-title/BC_REQUEST_UNREADABLE': () => 'The request could not be read',
  'problem-to-do/BC_REQUEST_UNREADABLE': () =>
    'Send JSON with the header content-type: application/json.',
  'problem-title/BC_REQUEST_TOO_LARGE': () => 'The request is too large',
  'problem-to-do/BC_REQUEST_TOO_LARGE': () => 'Send at most 1 MB at once.',
  'problem-title/BC_ROUTE_UNKNOWN': () => 'There is nothing at this address',
  'problem-to-do/BC_ROUTE_UNKNOWN': () => 'See /api/v1/openapi.json for the addresses that exist.',
  'problem-title/BC_THING_UNKNOWN': () => 'There is no such thing here',
  'problem-to-do/BC_THING_UNKNOWN': () =>
    'Check the id; list what exists with a GET on the collection.',
  'problem-title/BC_REFERENCE_UNKNOWN': () => 'A field points at something that does not exist',
  'problem-to-do/BC_REFERENCE_UNKNOWN': () => 'Create it first, or use the id of an existing one.',
  'problem-title/BC_STATE_CONFLICT': () => 'This does not fit what is already recorded',
  'problem-to-do/BC_STATE_CONFLICT': () =>
    'Look at what is recorded, then send a corrected request.',
  'problem-title/BC_MERGE_UNLIKE': () => 'These boards cannot be put together',
  'problem-to-do/BC_MERGE_UNLIKE': () =>
    'Keep them as two batches, or put together only boards of one timber, plan and coats.',
  'problem-title/BC_SPLIT_TOO_MANY': () => 'There are not that many boards to split off',
  'problem-to-do/BC_SPLIT_TOO_MANY': () =>
    'Give fewer boards; where all of them went, record a move instead.',
  'problem-title/BC_ID_TAKEN': () => 'This id is already used for something else',
  'problem-to-do/BC_ID_TAKEN': () => 'Send it with a new id.',
  'problem-title/BC_WRITE_NOT_ALLOWED': () => 'Changes are only accepted from the computer itself',
  'problem-to-do/BC_WRITE_NOT_ALLOWED': () =>
    'Open the page on the computer that runs the daemon, at http://localhost, or choose a PIN there, or here with the set-up code that the daemon printed at its start.',
  'problem-title/BC_LOGIN_NEEDED': () => 'This needs a log-in',
  'problem-to-do/BC_LOGIN_NEEDED': () => 'Log in with the PIN, then send it again.',
  'problem-title/BC_ROLE_TOO_SMALL': () => 'This device may not do this',
  'problem-to-do/BC_ROLE_TOO_SMALL': () => 'Log in with a PIN that may.',
  'problem-title/BC_PIN_WRONG': () => 'The PIN or code is not right',
  'problem-to-do/BC_PIN_WRONG': () =>
    'Try again; who has forgotten the PIN sets a new one on the computer itself with: boardcure pin.',
  'problem-title/BC_TRIES_EXHAUSTED': () => 'Too many wrong PINs or codes came from this device',
  'problem-to-do/BC_TRIES_EXHAUSTED': () =>
    'Wait for the time it says, or use a device that is logged in, or set a new PIN on the computer itself with: boardcure pin.',
  'problem-title/BC_REQUEST_FOREIGN': () => 'The request came from a page of another site',
  'problem-to-do/BC_REQUEST_FOREIGN': () =>
    'Use the page of this daemon; a program sends the header x-boardcure-request with any value.',
  'problem-title/BC_HOST_UNKNOWN': () => 'The daemon is not known under this name',
  'problem-to-do/BC_HOST_UNKNOWN': () =>
    'Use its IP address or the name of its computer, or list the name in the settings under http.names.',
  'problem-title/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Closing the broker would silence something in use',
  'problem-to-do/BC_SENSORS_WOULD_FALL_SILENT': () =>
    'Create a name and a password for each and put them in, or send those that may fall silent under silence.',
  'problem-title/BC_TOO_MANY_REQUESTS': () => 'Too many requests come from this device',
  'problem-to-do/BC_TOO_MANY_REQUESTS': () =>
    'Wait a minute, or raise http.maxRequestsPerMinute in the settings.',
  'problem-title/BC_TOO_MANY_STREAMS': () => 'Too many pages listen already',
  'problem-to-do/BC_TOO_MANY_STREAMS': () =>
    'Wait until another page is closed, or raise http.maxStreams in the settings.',
  'problem-title/BC_SETTING_FIXED': () => 'This setting is not changed on the page',
  'problem-to-do/BC_SETTING_FIXED': () =>
    'Set it in the settings file on the computer itself, or take away the flag or variable that gives it, and start the daemon again.',
  'problem-title/BC_STORE_FULL': () => 'The disk is full',
  'problem-to-do/BC_STORE_FULL': () => 'Free some space on the disk; recording goes on by itself.',
  'problem-title/BC_INTERNAL': () => 'Something went wrong inside the daemon',
  'problem-to-do/BC_INTERNAL': () => 'Try again; if it happens again, look at the daemon’s log.',
};
