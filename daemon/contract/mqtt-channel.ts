import { z } from 'zod';
import { Gate, gates, Stage, VerdictWord } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { NoticeKind } from './notice.ts';
import { PlaceAir, PlaceKind } from './place.ts';
import { SentenceValues } from './sentence.ts';

/** One topic of MQTT as data: who publishes there, and what. */
export interface MqttChannel {
  /** With its variable parts in braces. */
  readonly topic: string;
  /** `in`: others publish, the daemon takes; `out`: the daemon publishes. */
  readonly direction: 'in' | 'out';
  readonly retained: boolean;
  readonly summary: string;
  readonly payload: z.ZodType;
}

const OwnTime = z
  .union([Moment, z.number()])
  .describe('ISO 8601 with an offset, epoch seconds, or from 100,000,000,000 on milliseconds');

const state = { schema: z.literal(1).describe('version of this payload') };

export const StatusState = z.object({
  ...state,
  status: z.enum(['online', 'offline']),
  since: Moment.optional().describe('when the daemon came up; only while it is online'),
});

export const PlaceState = z.object({
  ...state,
  name: z.string(),
  kind: PlaceKind,
  air: PlaceAir,
});

export const BatchState = z.object({
  ...state,
  name: z.string(),
  placeId: Id,
  coat: z
    .object({
      coat: z.int().describe('index in the coating plan; 0 is the primer'),
      finishedAt: Moment,
      degreeHours: z.number().meta({ unit: '°C·h' }),
      stage: Stage,
      gates: z.record(
        Gate,
        z.object({ verdict: VerdictWord, probability: z.number().min(0).max(1) }),
      ),
    })
    .nullable()
    .describe(`the newest coat with a verdict for ${gates.join(', ')}; null before the first`),
});

/** All topics; `{site}` is the name of the site in the settings. */
export const mqttChannels = {
  value: {
    topic: 'boardcure/{site}/sensor/{sensor}/{quantity}',
    direction: 'in',
    retained: false,
    summary: 'One reading of one quantity, at QoS 1: acknowledged once it is on disk',
    payload: z.union([
      z
        .number()
        .describe(
          'the value as text, in the unit of the quantity or with another one behind it (70.7 °F); a comma may be its decimal point',
        ),
      z.object({
        value: z.number(),
        unit: z
          .string()
          .optional()
          .describe('the unit of the quantity when left out; one that does not fit is refused'),
        time: OwnTime.optional(),
      }),
    ]),
  },
  pack: {
    topic: 'boardcure/{site}/sensor/{sensor}',
    direction: 'in',
    retained: false,
    summary: 'Several quantities or times at once: a SenML pack (RFC 8428) as JSON or CBOR',
    payload: z
      .array(
        z.looseObject({
          bn: z.string().optional().describe('base name, put before every name that follows'),
          bt: z.number().optional().describe('base time, s'),
          bu: z.string().optional().describe('base unit'),
          n: z.string().optional().describe('name; its last part is the quantity'),
          u: z.string().optional().describe('unit symbol; it must fit the quantity'),
          t: z.number().optional().describe('time, s; below 2^28 it is relative to now'),
          v: z.number().optional().describe('value'),
        }),
      )
      .min(1)
      .max(1000),
  },
  forecast: {
    topic: 'boardcure/{site}/forecast/outdoors',
    direction: 'in',
    retained: true,
    summary: 'A weather forecast for outdoors by the hour; it takes the place of the one before',
    payload: z
      .array(
        z.object({
          time: OwnTime,
          tempC: z.number().meta({ unit: '°C' }),
          rhPercent: z.number().optional().meta({ unit: '%' }),
          rainMm: z.number().optional().meta({ unit: 'mm' }).describe('rain within its hour'),
        }),
      )
      .max(400),
  },
  status: {
    topic: 'boardcure/{site}/status',
    direction: 'out',
    retained: true,
    summary: 'Whether the daemon is there',
    payload: StatusState,
  },
  place: {
    topic: 'boardcure/{site}/place/{id}',
    direction: 'out',
    retained: true,
    summary: 'The air at a place',
    payload: PlaceState,
  },
  batch: {
    topic: 'boardcure/{site}/batch/{id}',
    direction: 'out',
    retained: true,
    summary: 'How far a batch is; taken back when the batch is closed',
    payload: BatchState,
  },
  notice: {
    topic: 'boardcure/{site}/notice',
    direction: 'out',
    retained: false,
    summary: 'What wants attention, when it is raised and when it is told again',
    payload: z.object({
      ...state,
      id: z.string().describe('the same at every try: a notice may come twice'),
      noticeId: Id,
      event: z.enum(['raised', 'repeated']),
      kind: NoticeKind,
      subject: z.string().describe('id of the place, sensor or batch it is about'),
      text: z.string().describe('in the language of the site'),
      code: z.string().describe('of the sentence'),
      values: SentenceValues.optional(),
      at: Moment,
      clearedAt: Moment.nullable().describe('when it was over, where that was before it was sent'),
    }),
  },
  digest: {
    topic: 'boardcure/{site}/digest',
    direction: 'out',
    retained: false,
    summary: 'The morning summed up: what to feel, what is wrong, weather to brush',
    payload: z.object({ ...state, id: z.string(), title: z.string(), text: z.string() }),
  },
} as const satisfies Record<string, MqttChannel>;

export type MqttChannelName = keyof typeof mqttChannels;
