import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Role } from './role.ts';

/** Shown in lists of devices; what a person calls a phone or a tablet. */
const DeviceName = z.string().trim().min(1).max(80);
/** Typed on a wet phone: figures are enough, letters are taken as well. */
export const Pin = z.string().min(6).max(64).describe('PIN: 6 to 64 figures or letters');

export const Session = z.object({
  role: Role.nullable().describe('what this request may do; null when it has to log in first'),
  by: z
    .enum(['log-in', 'pairing', 'this-computer', 'network', 'nothing'])
    .describe(
      'what the role rests on: a PIN, a paired tablet, being the computer itself while no PIN is set, or the open network',
    ),
  device: z.string().nullable().describe('name of the logged-in or paired device'),
  expiresAt: Moment.nullable().describe('when the log-in ends at the latest'),
  pinSet: z.boolean(),
  operatorPinSet: z.boolean().describe('whether a second PIN for recording work is set'),
  look: z.enum(['open', 'log-in']).describe('whether looking needs a log-in'),
  setUpCode: z.boolean().describe('whether the one-time code of the first start is still good'),
});
export type Session = z.infer<typeof Session>;

export const NewSession = z.strictObject({
  pin: z.string().min(1).max(64),
  device: DeviceName.optional(),
});

export const NewPin = z.strictObject({
  pin: Pin,
  role: z
    .enum(['own', 'operate'])
    .default('own')
    .describe('own: the PIN of whoever runs the site; operate: a second one for recording work'),
  currentPin: z.string().min(1).max(64).optional().describe('needed to change the own PIN'),
  setUpCode: z
    .string()
    .min(1)
    .max(40)
    .optional()
    .describe('the code that the daemon printed at its start, to set the first PIN'),
  device: DeviceName.optional(),
});

export const Device = z.object({
  id: Id,
  kind: z.enum(['log-in', 'tablet']),
  role: Role,
  name: z.string(),
  since: Moment,
  seenAt: Moment.nullable().describe('when it last asked for something; null when not yet'),
  isThis: z.boolean().describe('whether it is the one that asks'),
});
export type Device = z.infer<typeof Device>;

export const NewPairingCode = z.strictObject({ name: DeviceName });
export const PairingCode = z.object({
  code: z.string().describe('to be typed on the tablet; good once'),
  name: z.string(),
  expiresAt: Moment,
});
export type PairingCode = z.infer<typeof PairingCode>;

export const NewTablet = z.strictObject({ code: z.string().min(1).max(40) });

export const EndDevices = z.strictObject({
  tablets: z.stringbool().optional().describe('true also unpairs every tablet'),
});
