import { groupCommit } from '../../daemon/ingest/group-commit.ts';
import { createIntake } from '../../daemon/ingest/intake.ts';
import type { IngestLog } from '../../daemon/ingest/message-port.ts';
import type { ReadingGroup } from '../../daemon/rules/facts.ts';

export const quiet: IngestLog = { info() {}, warn() {} };

/** Intake and group commit as the daemon has them, over a store that the test can hold and break. */
export function heldStore(options: { groupSize?: number } = {}) {
  const stored: ReadingGroup[] = [];
  let gate: Promise<void> = Promise.resolve();
  let open = () => {};
  let broken: Error | null = null;
  let begun = 0;
  const onBegin = new Set<() => void>();
  const queue = groupCommit<null>({
    async commit(group) {
      begun++;
      for (const look of onBegin) look();
      await gate;
      if (broken) throw broken;
      stored.push(group);
      return null;
    },
    committed() {},
    failed() {},
    now: Date.now,
    spacingMs: 5,
    groupSize: options.groupSize ?? 400,
  });
  const intake = createIntake({
    site: 'shed',
    maxPayloadBytes: 65_536,
    now: Date.now,
    clockTrusted: () => true,
    queue,
  });
  return {
    intake,
    take: intake.take,
    queue,
    /** From now on commits run without end, until they are let go. */
    hold(): void {
      gate = new Promise((resolve) => {
        open = resolve;
      });
    },
    release(): void {
      open();
      gate = Promise.resolve();
    },
    /** From now on commits fail; null mends the store. */
    break(cause: Error | null): void {
      broken = cause;
    },
    /** Settles when so many commits have begun since the start. */
    commitBegun: (count: number): Promise<void> =>
      new Promise((resolve) => {
        const look = () => {
          if (begun < count) return;
          onBegin.delete(look);
          resolve();
        };
        onBegin.add(look);
        look();
      }),
    readings: () => stored.flatMap(({ readings }) => readings),
    refused: () => stored.flatMap(({ refused }) => refused),
    groups: () => stored.map(({ readings, refused }) => readings.length + refused.length),
  };
}
