import type {
  IncomingReading,
  OpenMessage,
  PendingReading,
  ReadingGroup,
  RefusedMessage,
} from '../rules/facts.ts';

/** What one message brings to the group that it is committed with. */
export interface Brought {
  readings: readonly IncomingReading[];
  refused: readonly RefusedMessage[];
  /** Readings that wait for the clock. */
  pending: readonly PendingReading[];
  /** The message itself, where it must not be taken again. */
  opened: OpenMessage | undefined;
  /** Messages that will not come again. */
  released: ReadingGroup['released'];
}

/** How much of a group a message takes up: one that brings nothing is written too. */
export const shareOf = ({ readings, refused, pending }: Brought): number =>
  Math.max(1, readings.length + refused.length + pending.length);

/** @param taken - messages in the order of arrival */
export function together(taken: readonly Brought[], arrivedAt: number): ReadingGroup {
  const pendings: PendingReading[] = [];
  const group: ReadingGroup = { readings: [], refused: [], pending: pendings, arrivedAt };
  for (const { readings, refused, pending, opened, released } of taken) {
    for (const one of readings) group.readings.push(one);
    for (const one of refused) group.refused.push(one);
    for (const one of pending) pendings.push(one);
    // One after the other: a number that is released may be given to another message at once.
    if (released) noteReleased(group, released);
    if (opened) {
      group.opened ??= [];
      group.opened.push(opened);
    }
  }
  return group;
}

function noteReleased(group: ReadingGroup, released: NonNullable<ReadingGroup['released']>): void {
  group.released = [...(group.released ?? []), ...released];
  group.opened = (group.opened ?? []).filter(
    ({ client, messageId }) =>
      !released.some((one) => one.client === client && one.messageId === messageId),
  );
}
