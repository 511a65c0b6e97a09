import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../../daemon/contract/problem.ts';
import type { Outcome } from '../../../dashboard/api.ts';
import type { Entry, EntryStore, NewEntry } from '../../../dashboard/offline/entry.ts';
import { createOutbox, type Outbox } from '../../../dashboard/offline/outbox.ts';

const problem = (code: string, status: number): Problem => ({
  type: 'about:blank',
  title: code,
  status,
  detail: code,
  code,
  doThis: '',
});
const away = problem('AWAY', 0);

/** What happens to a request on its way: the answer may be lost after the daemon committed. */
type Luck = 'arrives' | 'request-lost' | 'reply-lost' | 'stumbles' | 'login-needed';

/** A daemon as the contract has it: an id that it knows changes nothing, some bodies it refuses. */
function fakeDaemon() {
  const committed: string[] = [];
  const asked: string[] = [];
  return {
    committed,
    asked,
    answer({ id, given }: Entry, luck: Luck): Outcome<unknown> {
      asked.push(id);
      if (luck === 'request-lost') return { kind: 'problem', problem: away };
      if (luck === 'stumbles') return { kind: 'problem', problem: problem('BC_INTERNAL', 500) };
      if (luck === 'login-needed') {
        return { kind: 'problem', problem: problem('BC_LOGIN_NEEDED', 401) };
      }
      if (given.body.bad === true) {
        return { kind: 'problem', problem: problem('BC_REQUEST_INVALID', 400) };
      }
      if (!committed.includes(id)) committed.push(id);
      return luck === 'reply-lost'
        ? { kind: 'problem', problem: away }
        : { kind: 'done', reply: { id } };
    },
  };
}

/** A browser's database: what was put survives the page. */
function memoryStore(): EntryStore & { kept: Map<string, Entry> } {
  const kept = new Map<string, Entry>();
  return {
    kept,
    all: async () => [...kept.values()],
    put: async (entry) => void kept.set(entry.id, entry),
    remove: async (id) => void kept.delete(id),
  };
}

const entry = (id: string, batchId = 'batch', body: Record<string, unknown> = {}): NewEntry =>
  ({
    id,
    name: 'createRemark',
    given: { params: { id: batchId }, body: { id, ...body } },
    batchIds: [batchId],
    batchName: 'Boards',
  }) as unknown as NewEntry;

interface Shed {
  readonly outbox: Outbox;
  now: number;
  readonly timers: (() => void)[];
}

function page(
  store: EntryStore,
  send: (entry: Entry) => Promise<Outcome<unknown>>,
  clock = { known: true, aheadMs: 0 },
): Shed {
  const timers: (() => void)[] = [];
  const shed: Shed = {
    now: 1_000,
    timers,
    outbox: createOutbox({
      store,
      send,
      clock: () => ({
        shedNow: shed.now + (clock.known ? clock.aheadMs : 0),
        known: clock.known,
        deviceNow: shed.now,
      }),
      after: (_, act) => void timers.push(act),
    }),
  };
  return shed;
}

/** Lets everything that is due happen. */
const settled = () => new Promise((resolve) => setImmediate(resolve));

describe('what was entered', () => {
  it('arrives each once and in order, whatever is lost on the way and however often a page begins anew', async () => {
    const step = fc.oneof(
      {
        weight: 4,
        arbitrary: fc.record({
          kind: fc.constant('enter' as const),
          batch: fc.constantFrom('a', 'b'),
          bad: fc.boolean(),
        }),
      },
      { weight: 2, arbitrary: fc.constant({ kind: 'flush' as const }) },
      { weight: 1, arbitrary: fc.constant({ kind: 'reload' as const }) },
    );
    const luck = fc.constantFrom<Luck>(
      'arrives',
      'request-lost',
      'reply-lost',
      'stumbles',
      'login-needed',
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(step, { maxLength: 12 }),
        fc.array(luck, { maxLength: 40 }),
        async (steps, lucks) => {
          const daemon = fakeDaemon();
          const store = memoryStore();
          let turn = 0;
          const send = async (sent: Entry) => {
            await null;
            return daemon.answer(sent, lucks[turn++] ?? 'arrives');
          };
          let { outbox } = page(store, send);
          const entered: { id: string; batch: string; bad: boolean }[] = [];
          for (const [at, one] of steps.entries()) {
            if (one.kind === 'reload') ({ outbox } = page(store, send));
            if (one.kind !== 'enter') await outbox.open();
            else {
              const id = `${String(at).padStart(2, '0')}`;
              const bad = one.bad && at % 3 === 0;
              entered.push({ id, batch: one.batch, bad });
              await outbox.record(entry(id, one.batch, { bad }));
            }
          }
          await settled();
          // The network is back, and a person is there for the PIN.
          lucks.length = 0;
          ({ outbox } = page(store, send));
          await outbox.open();
          for (;;) {
            const refused = outbox.entries.value.find((kept) => kept.refused !== null);
            if (refused === undefined) break;
            await outbox.correct(refused.id, { ...refused.given.body, bad: false });
          }
          expect(store.kept.size).toBe(0);
          for (const batch of ['a', 'b']) {
            const ids = entered.filter((one) => one.batch === batch).map(({ id }) => id);
            expect(daemon.committed.filter((id) => ids.includes(id))).toEqual(ids);
          }
          expect(daemon.committed).toHaveLength(entered.length);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('is kept before it is sent, and gone once it was taken', async () => {
    const store = memoryStore();
    const seen: number[] = [];
    const { outbox } = page(store, async () => {
      seen.push(store.kept.size);
      return { kind: 'done', reply: 'taken' };
    });
    const ticket = await outbox.record(entry('one'));
    expect(await ticket.became).toEqual({ kind: 'sent', reply: 'taken' });
    expect(seen).toEqual([1]);
    expect(store.kept.size).toBe(0);
  });

  it('is sent again with the same id when the reply was lost after the daemon had committed', async () => {
    const store = memoryStore();
    const daemon = fakeDaemon();
    let luck: Luck = 'reply-lost';
    const { outbox } = page(store, async (sent) => daemon.answer(sent, luck));
    const ticket = await outbox.record(entry('one'));
    expect((await ticket.became).kind).toBe('waits');
    expect(daemon.committed).toEqual(['one']);
    luck = 'arrives';
    await outbox.flush();
    expect(daemon.committed).toEqual(['one']);
    expect(daemon.asked).toEqual(['one', 'one']);
    expect(outbox.entries.value).toEqual([]);
  });

  it('is never lost to a refusal: it stays, holds up what is about the same batch, and lets others pass', async () => {
    const store = memoryStore();
    const daemon = fakeDaemon();
    let luck: Luck = 'request-lost';
    const { outbox } = page(store, async (sent) => daemon.answer(sent, luck));
    await outbox.record(entry('coat', 'a', { bad: true }));
    await outbox.record(entry('test', 'a'));
    await outbox.record(entry('other', 'b'));
    await settled();
    luck = 'arrives';
    await outbox.flush();
    expect(daemon.committed).toEqual(['other']);
    expect(outbox.entries.value.map(({ id, refused }) => [id, refused?.code ?? null])).toEqual([
      ['coat', 'BC_REQUEST_INVALID'],
      ['test', null],
    ]);
    await outbox.correct('coat', { bad: false });
    expect(daemon.committed).toEqual(['other', 'coat', 'test']);
  });

  it('can be dropped, and then lets pass what waited behind it', async () => {
    const daemon = fakeDaemon();
    const { outbox } = page(memoryStore(), async (sent) => daemon.answer(sent, 'arrives'));
    await outbox.record(entry('bad', 'a', { bad: true }));
    await outbox.record(entry('good', 'a'));
    await settled();
    expect(await outbox.takeBack('bad')).toBe(true);
    await settled();
    expect(daemon.committed).toEqual(['good']);
  });

  it('asks for the PIN once, not with every attempt, and goes on when somebody gives it', async () => {
    const daemon = fakeDaemon();
    let luck: Luck = 'login-needed';
    const { outbox } = page(memoryStore(), async (sent) => daemon.answer(sent, luck));
    await outbox.record(entry('one'));
    await settled();
    await outbox.flush();
    await outbox.flush();
    expect(daemon.asked).toEqual(['one']);
    luck = 'arrives';
    await outbox.flush(true);
    expect(daemon.committed).toEqual(['one']);
    expect(outbox.stoppedBy.value).toBeNull();
  });

  it('can be taken back while it is held, and is then never sent', async () => {
    const daemon = fakeDaemon();
    const store = memoryStore();
    const shed = page(store, async (sent) => daemon.answer(sent, 'arrives'));
    const ticket = await shed.outbox.record(entry('mis-tap'), 5_000);
    await shed.outbox.flush();
    expect(await shed.outbox.takeBack('mis-tap')).toBe(true);
    shed.now += 5_000;
    for (const timer of shed.timers) timer();
    await settled();
    expect((await ticket.became).kind).toBe('taken-back');
    expect(daemon.asked).toEqual([]);
    expect(store.kept.size).toBe(0);
  });

  it('is sent after the hold, before the next entry, and at once when the page is left', async () => {
    const daemon = fakeDaemon();
    const shed = page(memoryStore(), async (sent) => daemon.answer(sent, 'arrives'));
    await shed.outbox.record(entry('held'), 5_000);
    await shed.outbox.record(entry('next'));
    await settled();
    expect(daemon.committed).toEqual(['held', 'next']);
    await shed.outbox.record(entry('pocket'), 5_000);
    await shed.outbox.hurry();
    expect(daemon.committed).toEqual(['held', 'next', 'pocket']);
    expect(await shed.outbox.takeBack('pocket')).toBe(false);
  });

  it('is sent straight where nothing can be kept, and says so when that fails too', async () => {
    const full: EntryStore = {
      all: () => Promise.reject(new Error('no storage')),
      put: () => Promise.reject(new Error('no storage')),
      remove: () => Promise.reject(new Error('no storage')),
    };
    const daemon = fakeDaemon();
    let luck: Luck = 'arrives';
    const { outbox } = page(full, async (sent) => daemon.answer(sent, luck));
    expect((await (await outbox.record(entry('one'))).became).kind).toBe('sent');
    expect(outbox.keeps.value).toBe(false);
    luck = 'request-lost';
    expect(await (await outbox.record(entry('two'))).became).toMatchObject({
      kind: 'not-kept',
      problem: { code: 'NOT_KEPT' },
    });
    expect(daemon.committed).toEqual(['one']);
  });

  it('bears the shed’s time also when only this device’s clock was known', async () => {
    const sent: Entry[] = [];
    const store = memoryStore();
    const clock = { known: false, aheadMs: 3 * 3_600_000 };
    const shed = page(
      store,
      async (one) => {
        sent.push(one);
        return clock.known ? { kind: 'done', reply: null } : { kind: 'problem', problem: away };
      },
      clock,
    );
    const typed = '2026-05-04T07:30:00.000Z';
    const at = new Date(shed.now).toISOString();
    await shed.outbox.record(entry('own clock', 'a', { at }));
    await shed.outbox.record(entry('typed', 'b', { at: typed }));
    await settled();
    clock.known = true;
    shed.now += 60_000;
    await shed.outbox.flush();
    const arrived = Object.fromEntries(sent.slice(-2).map(({ id, given }) => [id, given.body.at]));
    expect(arrived).toEqual({
      'own clock': new Date(1_000 + clock.aheadMs).toISOString(),
      typed,
    });
  });
});
