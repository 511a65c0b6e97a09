import { z } from 'zod';
import { usualNoticeLimits, usualRagRepeatHours } from '../../rules/notice.ts';
import { webhookRefusal } from '../../rules/webhook-target.ts';

const clock = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time of day like 06:30')
  .meta({ unit: 'local time, hh:mm' });

const heedsQuietHours = z
  .boolean()
  .default(true)
  .meta({ onPage: true })
  .describe('whether the quiet hours hold for it');

const secret = z.string().min(1).nullable().default(null);

const webhook = z
  .strictObject({
    url: z
      .string()
      .nullable()
      .default(null)
      .describe('http:// or https:// address that notices are posted to; none when left out'),
    secret: secret.describe(
      'key that each post is signed with (RFC 9421, hmac-sha256), at least 16 characters; better in secretFile or BOARDCURE_WEBHOOK_SECRET',
    ),
    secretFile: z
      .string()
      .min(1)
      .nullable()
      .default(null)
      .describe('file that holds the key, read at the start'),
    timeoutSeconds: z
      .int()
      .min(1)
      .max(120)
      .default(10)
      .meta({ unit: 's' })
      .describe('longest that an answer is waited for'),
    heedsQuietHours,
  })
  .superRefine(({ url, secret: key, secretFile }, context) => {
    if (url === null) return;
    const refusal = webhookRefusal(url);
    if (refusal !== null) context.addIssue({ code: 'custom', message: refusal, path: ['url'] });
    if (key !== null && key.length < 16) {
      context.addIssue({
        code: 'custom',
        message: 'must have at least 16 characters',
        path: ['secret'],
      });
    }
    if (key === null && secretFile === null) {
      context.addIssue({
        code: 'custom',
        message:
          'must be given with url, here, in secretFile or in BOARDCURE_WEBHOOK_SECRET: who receives the posts could not tell them from anybody else’s',
        path: ['secret'],
      });
    }
  })
  .prefault({});

const address = z
  .string()
  .regex(/^[^\s@,;<>"]+@[^\s@,;<>"]+$/, 'must be an address like a@b.example');

const mail = z
  .strictObject({
    host: z
      .string()
      .min(1)
      .nullable()
      .default(null)
      .describe('name of the SMTP server that takes the mail; no mail when left out'),
    port: z.int().min(1).max(65_535).default(587).describe('of the SMTP server'),
    security: z
      .enum(['starttls', 'tls', 'none'])
      .default('starttls')
      .describe(
        'starttls insists on it, tls speaks it from the start (port 465), none sends as plain text',
      ),
    user: z.string().min(1).nullable().default(null).describe('name to log in with, where asked'),
    password: secret.describe('better in passwordFile or BOARDCURE_MAIL_PASSWORD'),
    passwordFile: z
      .string()
      .min(1)
      .nullable()
      .default(null)
      .describe('file that holds the password, read at the start'),
    from: address.nullable().default(null).describe('address that mail comes from'),
    to: z.array(address).max(20).default([]).describe('addresses that mail goes to'),
    timeoutSeconds: z
      .int()
      .min(1)
      .max(300)
      .default(30)
      .meta({ unit: 's' })
      .describe('longest that the server is waited for'),
    heedsQuietHours,
  })
  .superRefine(({ host, from, to }, context) => {
    if (host === null) return;
    const needed = (path: string) =>
      context.addIssue({ code: 'custom', message: 'must be given with host', path: [path] });
    if (from === null) needed('from');
    if (to.length === 0) needed('to');
  })
  .prefault({});

/** Notices: who is told, how, and when not. */
export const noticeSettings = z
  .strictObject({
    quietHours: z
      .strictObject({
        from: clock
          .default('22:00')
          .meta({ onPage: true })
          .describe('from then on people are spared'),
        to: clock
          .default('06:00')
          .meta({ onPage: true })
          .describe('until then; the same as from: never'),
      })
      .prefault({})
      .describe(
        'what is held back is told together at their end; rags, vapour and overheating are told at any hour',
      ),
    digestAt: clock
      .nullable()
      .default('06:30')
      .meta({ onPage: true })
      .describe(
        'when the day ahead is summed up; never where “Nothing” is chosen on the page: the file has no word for it',
      ),
    ragRepeatHours: z
      .number()
      .min(0.25)
      .max(24)
      .default(usualRagRepeatHours)
      .meta({ unit: 'h', onPage: true })
      .describe(
        'how often the rag line is told again on the first day until it is ticked; once a day after that. Assumption',
      ),
    overheatC: z
      .number()
      .min(30)
      .max(90)
      .default(usualNoticeLimits.overheatC)
      .meta({ unit: '°C', onPage: true })
      .describe('air in a room or rack that is too hot; cleared 5 K lower. Assumption'),
    giveUpHours: z
      .number()
      .min(1)
      .max(720)
      .default(72)
      .meta({ unit: 'h', onPage: true })
      .describe('for so long a message that does not arrive is tried again, ever less often'),
    mqtt: z
      .strictObject({
        on: z
          .boolean()
          .default(true)
          .meta({ onPage: true })
          .describe('whether notices go out as boardcure/<site>/notice'),
        heedsQuietHours: z
          .boolean()
          .default(false)
          .meta({ onPage: true })
          .describe('whether the quiet hours hold for it'),
      })
      .prefault({}),
    webhook,
    mail,
  })
  .prefault({});
export type NoticeSettings = z.output<typeof noticeSettings>;
