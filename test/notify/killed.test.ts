import { spawnSync } from 'node:child_process';
import { describe, expect, it, onTestFinished } from 'vitest';
import { deliverer } from '../../daemon/notify/deliver.ts';
import { webhookChannel } from '../../daemon/notify/webhook.ts';
import { openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { siteVoice } from '../../daemon/wording/voice.ts';
import { inThisThread, temporaryFolder } from '../store/store-sides.ts';
import { morning, noticeAt, policy, receiver } from './post-office.ts';

const built = new URL('../../.build/daemon/store/', import.meta.url);
const plan = {
  channels: [{ name: 'webhook', heedsQuiet: true }],
  quiet: null,
  timeZone: 'UTC',
};

/** Raises a notice in a process of its own, which is killed the moment that is on disk. */
function raiseAndDie(file: string, notice: object): NodeJS.Signals | null {
  const script = `
    const { openForWriting } = await import('${new URL('open.js', built).href}');
    const { storeWriter } = await import('${new URL('store.js', built).href}');
    const writer = storeWriter(openForWriting(${JSON.stringify(file)}), 2, 100, ${JSON.stringify(plan)});
    writer.changeNotices([${JSON.stringify(notice)}], [], ${morning}, []);
    process.kill(process.pid, 'SIGKILL');
  `;
  return spawnSync(process.execPath, ['--input-type=module', '-e', script]).signal;
}

describe('a daemon that is killed between raising and sending', () => {
  it('tells it after its next start, once', async () => {
    const { folder, remove } = temporaryFolder();
    onTestFinished(remove);
    const file = `${folder}/boardcure.sqlite`;
    const notice = noticeAt(morning);
    expect(raiseAndDie(file, notice)).toBe('SIGKILL');

    const { posted, url } = await receiver();
    for (const start of [1, 2]) {
      const writing = openForWriting(file);
      const reading = openForReading(file);
      const out = deliverer({
        channels: [
          webhookChannel({
            ...{ url, secret: 'a key of sixteen and more', timeoutMs: 2000 },
            ...{ site: 'shed', now: () => morning },
          }),
        ],
        due: storeReader(reading).dueMessages,
        keeper: inThisThread(storeWriter(writing, 2)),
        ...{ policy, voice: siteVoice('en', 'UTC'), now: () => morning + start },
        log: { warn: () => {}, error: () => {} },
      });
      await out.kick();
      await out.close();
      writing.close();
      reading.close();
    }
    expect(posted.map(({ body }) => JSON.parse(body).id)).toEqual([`${notice.id}.webhook`]);
  });
});
