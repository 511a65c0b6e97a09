import { z } from 'zod';
import { Moment } from './moment.ts';
import { SensorId } from './sensor.ts';

export const MqttMode = z
  .enum(['open', 'pairing', 'closed'])
  .describe(
    'open: anyone on the network may publish; pairing: the same, while sensors are given their names; closed: only who has a name and a password',
  );
export type MqttMode = z.infer<typeof MqttMode>;

export const MqttLoginName = z
  .string()
  .regex(/^[A-Za-z0-9._-]{1,64}$/)
  .describe('1 to 64 of the characters A–Z a–z 0–9 . _ -');
const Kind = z
  .enum(['node', 'listener', 'forecaster'])
  .describe(
    'node: publishes as its sensors; listener: hears what the daemon says; forecaster: sends a weather forecast',
  );

export const MqttLogin = z.object({
  name: z.string(),
  kind: Kind,
  sensors: z.array(z.string()),
  createdAt: Moment,
  usedAt: Moment.nullable().describe('when it last connected'),
});
export type MqttLogin = z.infer<typeof MqttLogin>;

export const NewMqttLogin = z.strictObject({
  name: MqttLoginName,
  kind: Kind.default('node'),
  sensors: z.array(SensorId).max(200).default([]).describe('what a node may publish as'),
});
export const MqttLoginChange = z.strictObject({
  sensors: z.array(SensorId).max(200).describe('what the node may publish as from now on'),
});

/** The only time that a password is told. */
export const MadeMqttLogin = MqttLogin.extend({
  password: z.string().describe('told this once; only its hash is kept'),
});
export type MadeMqttLogin = z.infer<typeof MadeMqttLogin>;

export const PairingSensor = z.object({
  id: z.string(),
  name: z.string().nullable(),
  latestAt: Moment.nullable(),
  login: z.string().nullable(),
  pairing: z.enum(['paired', 'waiting', 'unpaired', 'mixed']),
});
export type PairingSensor = z.infer<typeof PairingSensor>;

export const MqttAccess = z.object({
  mode: MqttMode,
  broker: z.enum(['embedded', 'external']),
  sensors: z
    .array(PairingSensor)
    .describe(
      'sensors that sent something in the last 30 days; those not paired would fall silent',
    ),
  logins: z.array(MqttLogin),
  listeners: z
    .array(z.object({ client: z.string(), filter: z.string(), at: Moment }))
    .describe('clients without a name that listen, newest first'),
  wrongPasswords: z
    .array(z.object({ name: z.string(), client: z.string(), at: Moment }))
    .describe('names that were used with a wrong password, newest first'),
  strays: z
    .array(z.object({ name: z.string(), topic: z.string(), at: Moment }))
    .describe('what named clients sent that they may not, newest first'),
});
export type MqttAccess = z.infer<typeof MqttAccess>;

export const MqttModeChange = z.strictObject({
  mode: MqttMode,
  silence: z
    .array(SensorId)
    .max(10_000)
    .default([])
    .describe('sensors in use that may fall silent; closing is refused while another one would'),
  silenceListeners: z
    .boolean()
    .default(false)
    .describe('whether listeners without a name may be sent away'),
});
