import { createServer, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { SMTPServer } from 'smtp-server';
import { v7 as newId } from 'uuid';
import { onTestFinished } from 'vitest';
import type { Channel } from '../../daemon/notify/channel.ts';
import { deliverer } from '../../daemon/notify/deliver.ts';
import type { NewNoticeFact } from '../../daemon/rules/facts.ts';
import type { PostingPlan, RetryPolicy } from '../../daemon/rules/outgoing.ts';
import { openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { siteVoice } from '../../daemon/wording/voice.ts';
import { inThisThread, temporaryFolder } from '../store/store-sides.ts';

export const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
export const policy: RetryPolicy = {
  firstMs: minuteMs / 2,
  longestMs: hourMs,
  giveUpMs: 72 * hourMs,
};

/** 20 May 2026, 10:00 in Stockholm. */
export const morning = Date.UTC(2026, 4, 20, 8);

export const noticeAt = (at: number, given: Partial<NewNoticeFact> = {}): NewNoticeFact => ({
  id: newId(),
  kind: 'place-silent',
  subject: newId(),
  text: 'Rack 1 has been silent for hours.',
  raisedAt: at,
  seenAt: null,
  clearedAt: null,
  ...given,
});

/** A store on disk that outlives whoever sends; `restart` throws away all that is in memory. */
export function postOffice(plan: PostingPlan, channels: () => readonly Channel[]) {
  const { folder, remove } = temporaryFolder();
  const file = `${folder}/boardcure.sqlite`;
  const self = { now: morning, warned: [] as object[], forgetful: false };
  const open = () => {
    const writing = openForWriting(file);
    const write = inThisThread(storeWriter(writing, 2, 100, plan));
    const reading = openForReading(file);
    const read = storeReader(reading);
    const out = deliverer({
      channels: channels(),
      due: read.dueMessages,
      keeper: {
        beginMessage: write.beginMessage,
        messageFailed: write.messageFailed,
        async messageSent(id, at) {
          if (self.forgetful) throw new Error('the process ends here');
          await write.messageSent(id, at);
        },
      },
      policy,
      voice: siteVoice('en', plan.timeZone),
      now: () => self.now,
      log: { warn: (facts) => self.warned.push(facts), error: (facts) => self.warned.push(facts) },
    });
    async function close(): Promise<void> {
      await out.close();
      writing.close();
      reading.close();
    }
    return { write, read, out, close };
  };
  let office = open();
  onTestFinished(async () => {
    await office.close();
    remove();
  });
  return {
    get now() {
      return self.now;
    },
    set now(at: number) {
      self.now = at;
    },
    /** The process ends after a message arrived, and before that was written down. */
    set forgetful(is: boolean) {
      self.forgetful = is;
    },
    warned: self.warned,
    get office() {
      return office;
    },
    async restart(): Promise<void> {
      await office.close();
      office = open();
    },
    raise: (...notices: NewNoticeFact[]) => office.write.changeNotices(notices, [], self.now, []),
    tally: (channel: string) => office.read.channelTallies().find((one) => one.channel === channel),
  };
}

export interface Posted {
  url: string;
  headers: IncomingHttpHeaders;
  body: string;
}

/** A server that keeps what is posted, and answers as it is told: one status a request, then 204. */
export async function receiver(answers: (number | 'hang')[] = []) {
  const posted: Posted[] = [];
  const server: Server = createServer((request, response) => {
    let body = '';
    request.on('data', (bytes) => {
      body += bytes;
    });
    request.on('end', () => {
      posted.push({ url: request.url ?? '', headers: request.headers, body });
      const answer = answers.shift() ?? 204;
      if (answer === 'hang') return;
      response.writeHead(answer, answer === 302 ? { location: '/elsewhere' } : {}).end();
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  onTestFinished(async () => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  });
  return { posted, url: `http://127.0.0.1:${port}/hook?from=shed` };
}

/** An SMTP server that keeps the mail it takes; it refuses as many as it is told to first. */
export async function mailServer({ refuse = 0, password = null as string | null } = {}) {
  const mail: string[] = [];
  let left = refuse;
  const server = new SMTPServer({
    authOptional: password === null,
    allowInsecureAuth: true,
    disabledCommands: ['STARTTLS'],
    onAuth(given, _session, callback) {
      if (given.password === password) callback(null, { user: given.username ?? '' });
      else callback(new Error(`wrong password ${given.password}`));
    },
    onData(stream, _session, callback) {
      let text = '';
      stream.on('data', (bytes: Buffer) => {
        text += bytes.toString();
      });
      stream.on('end', () => {
        if (left > 0) {
          left--;
          callback(Object.assign(new Error('try again later'), { responseCode: 451 }));
          return;
        }
        mail.push(text);
        callback();
      });
    },
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve()));
  const { port } = server.server.address() as AddressInfo;
  onTestFinished(() => new Promise((resolve) => server.close(() => resolve())));
  return { mail, port };
}
