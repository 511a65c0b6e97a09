import { createHash, createHmac } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { mailChannel } from '../../daemon/notify/mail.ts';
import { webhookChannel } from '../../daemon/notify/webhook.ts';
import type { PostingPlan } from '../../daemon/rules/outgoing.ts';
import {
  hourMs,
  mailServer,
  minuteMs,
  morning,
  noticeAt,
  type Posted,
  postOffice,
  receiver,
} from './post-office.ts';

const secret = 'a key of the shed and its receiver';
const quiet = { from: '22:00', to: '06:00' };
const planFor = (name: 'webhook' | 'mail'): PostingPlan => ({
  channels: [{ name, heedsQuiet: true }],
  quiet,
  timeZone: 'Europe/Stockholm',
});

async function withWebhook(answers: (number | 'hang')[] = []) {
  const { posted, url } = await receiver(answers);
  const office = postOffice(planFor('webhook'), () => [
    webhookChannel({ url, secret, timeoutMs: 300, site: 'shed', now: () => office.now }),
  ]);
  return { posted, url, office };
}

async function withMail(options: Parameters<typeof mailServer>[0] = {}) {
  const { mail, port } = await mailServer(options);
  const parts = {
    ...{ host: '127.0.0.1', port, security: 'none' as const, user: null, password: null },
    ...{ from: 'shed@farm.example', to: ['painter@farm.example'], timeoutMs: 2000, site: 'shed' },
  };
  const office = postOffice(planFor('mail'), () => [mailChannel(parts)]);
  return { mail, office, parts };
}

const told = ({ body }: Posted) => JSON.parse(body);
/** Quoted-printable and folded lines undone, as far as these mails have them. */
const plain = (mail: string) => mail.replaceAll('=\r\n', '').replaceAll(/\r\n/g, '\n');

describe('a notice by webhook', () => {
  it('arrives once, with what it is about', async () => {
    const { posted, office } = await withWebhook();
    const notice = noticeAt(morning);
    await office.raise(notice);
    await office.office.out.kick();
    await office.office.out.kick();
    expect(posted).toHaveLength(1);
    expect(told(posted[0] as Posted)).toMatchObject({
      schema: 1,
      id: `${notice.id}.webhook`,
      site: 'shed',
      notices: [{ noticeId: notice.id, kind: 'place-silent', event: 'raised' }],
    });
    expect(office.tally('webhook')).toMatchObject({ waiting: 0, sentAt: morning });
  });

  it('is signed so that a receiver who knows the key can tell', async () => {
    const { posted, url, office } = await withWebhook();
    await office.raise(noticeAt(morning));
    await office.office.out.kick();
    const { headers, body } = posted[0] as Posted;
    // As a receiver would, by RFC 9421 and RFC 9530 with nothing of ours.
    const digest = `sha-256=:${createHash('sha256').update(body).digest('base64')}:`;
    const input = String(headers['signature-input']).replace(/^sig1=/, '');
    const base = [
      '"@method": POST',
      `"@target-uri": ${url}`,
      `"content-digest": ${digest}`,
      `"idempotency-key": ${headers['idempotency-key']}`,
      `"@signature-params": ${input}`,
    ].join('\n');
    const own = createHmac('sha256', secret).update(base).digest('base64');
    expect(headers['content-digest']).toBe(digest);
    expect(headers.signature).toBe(`sig1=:${own}:`);
    expect(input).toContain(`;created=${morning / 1000};`);
  });

  it('is tried again, ever later, under the same key until it is taken', async () => {
    const { posted, office } = await withWebhook([500, 503, 'hang']);
    await office.raise(noticeAt(morning));
    for (const [waitMs, count] of [
      [0, 1],
      [20_000, 1],
      [10_000, 2],
      [59_000, 2],
      [1000, 3],
      [2 * minuteMs, 4],
      [hourMs, 4],
    ] as const) {
      office.now += waitMs;
      await office.office.out.kick();
      expect(posted).toHaveLength(count);
    }
    expect(new Set(posted.map(({ headers }) => headers['idempotency-key'])).size).toBe(1);
    expect(new Set(posted.map(({ body }) => body)).size).toBe(1);
    expect(office.tally('webhook')).toMatchObject({ waiting: 0, givenUp: 0 });
  });

  it('is given up after three days, and stays countable', async () => {
    const { office } = await withWebhook(Array.from({ length: 100 }, () => 500));
    await office.raise(noticeAt(morning));
    for (let i = 0; i < 80; i++) {
      await office.office.out.kick();
      office.now += hourMs;
    }
    const tally = office.tally('webhook');
    expect(tally).toMatchObject({ waiting: 0, givenUp: 1 });
    expect(tally?.lastError).toBe('The receiver answered with 500.');
    expect(tally?.lastErrorSaid).toMatchObject({
      code: 'webhook-failed',
      values: { variant: 'answer', status: 500 },
    });
  });

  it('follows no redirect', async () => {
    const { posted, office } = await withWebhook([302]);
    await office.raise(noticeAt(morning));
    await office.office.out.kick();
    expect(posted.map(({ url }) => url)).toEqual(['/hook?from=shed']);
    expect(office.tally('webhook')?.lastError).toMatch(/302; redirects are not followed/);
  });

  it('says nothing of the key or the address in logs', async () => {
    const { office } = await withWebhook([500, 'hang']);
    await office.raise(noticeAt(morning), noticeAt(morning));
    await office.office.out.kick();
    expect(office.warned).toHaveLength(2);
    expect(JSON.stringify(office.warned)).not.toMatch(/\/hook|127\.0\.0\.1|a key of/);
  });

  it('is not lost where the sender ends between raising and sending, nor sent twice after', async () => {
    const { posted, office } = await withWebhook();
    const notice = noticeAt(morning);
    await office.raise(notice);
    await office.restart();
    await office.office.out.kick();
    await office.restart();
    await office.office.out.kick();
    expect(posted.map((one) => told(one).id)).toEqual([`${notice.id}.webhook`]);
  });

  it('comes again under its key where the sender ends before it knows that it arrived', async () => {
    const { posted, office } = await withWebhook();
    await office.raise(noticeAt(morning));
    office.forgetful = true;
    await office.office.out.kick();
    office.forgetful = false;
    await office.restart();
    await office.office.out.kick();
    await office.office.out.kick();
    expect(posted).toHaveLength(2);
    expect(new Set(posted.map(({ headers }) => headers['idempotency-key'])).size).toBe(1);
  });
});

describe('quiet hours', () => {
  /** 23:30 in Stockholm. */
  const night = Date.UTC(2026, 4, 20, 21, 30);
  const six = Date.UTC(2026, 4, 21, 4);

  it('hold what can wait, and tell it together at their end', async () => {
    const { posted, office } = await withWebhook();
    office.now = night;
    const [first, second] = [noticeAt(night), noticeAt(night + hourMs)];
    await office.raise(first);
    await office.office.out.kick();
    office.now += hourMs;
    await office.raise(second);
    await office.office.write.changeNotices([], [first.id], office.now + 5 * minuteMs, []);
    await office.restart();
    office.now = six - 1;
    await office.office.out.kick();
    expect(posted).toEqual([]);
    office.now = six;
    await office.office.out.kick();
    await office.office.out.kick();
    expect(posted).toHaveLength(1);
    const { notices, title } = told(posted[0] as Posted);
    expect(title).toMatch(/2 notices .* held back/);
    expect(notices.map((one: { noticeId: string }) => one.noticeId)).toEqual([first.id, second.id]);
    expect(notices.map((one: { clearedAt: string | null }) => one.clearedAt !== null)).toEqual([
      true,
      false,
    ]);
  });

  it.each(['rags', 'vapour', 'overheating'] as const)('do not hold %s', async (kind) => {
    const { posted, office } = await withWebhook();
    office.now = night;
    await office.raise(noticeAt(night, { kind }));
    await office.office.out.kick();
    expect(posted).toHaveLength(1);
  });

  it('let a repeated rag notice through, as a message of its own', async () => {
    const { posted, office } = await withWebhook();
    office.now = night;
    const rags = noticeAt(night, { kind: 'rags' });
    await office.raise(rags);
    await office.office.write.changeNotices([], [], night + 2 * hourMs, [rags.id]);
    office.now = night + 2 * hourMs;
    await office.office.out.kick();
    expect(posted.map((one) => told(one).id)).toEqual([
      `${rags.id}.webhook`,
      `${rags.id}.1.webhook`,
    ]);
    expect(told(posted[1] as Posted).notices[0].event).toBe('repeated');
  });
});

describe('a notice by e-mail', () => {
  it('arrives as a mail that keeps its Message-ID when the server first said no', async () => {
    const { mail, office } = await withMail({ refuse: 1 });
    const notice = noticeAt(morning);
    await office.raise(notice);
    await office.office.out.kick();
    expect(office.tally('mail')?.lastError).toBe('The SMTP server refused the message (451).');
    office.now += minuteMs;
    await office.restart();
    await office.office.out.kick();
    await office.office.out.kick();
    expect(mail).toHaveLength(1);
    const text = plain(mail[0] as string);
    expect(text).toContain(`Message-ID: <${notice.id}.mail@farm.example>`);
    expect(text).toContain('To: painter@farm.example');
    expect(text).toContain('Subject: shed: No readings');
    expect(text).toContain('Rack 1 has been silent for hours. (2026-05-20 10:00)');
  });

  it('logs in, and says nothing of the password when that fails', async () => {
    const { mail, office, parts } = await withMail({ password: 'right' });
    Object.assign(parts, { user: 'shed', password: 'not-this-one' });
    await office.restart();
    await office.raise(noticeAt(morning));
    await office.office.out.kick();
    expect(mail).toEqual([]);
    expect(JSON.stringify([office.warned, office.tally('mail')])).not.toContain('not-this-one');
    expect(office.tally('mail')?.lastError).toMatch(/did not take name and password/);

    Object.assign(parts, { password: 'right' });
    office.now += minuteMs;
    await office.restart();
    await office.office.out.kick();
    expect(mail).toHaveLength(1);
  });

  it('keeps a line break in a name out of the headers', async () => {
    const { mail, office } = await withMail();
    await office.raise(noticeAt(morning, { text: 'Rack\r\nBcc: other@farm.example' }));
    await office.office.out.kick();
    const [head = ''] = (mail[0] ?? '').split('\r\n\r\n');
    expect(head).not.toMatch(/^bcc:/im);
  });
});
