import { placeOfBatch } from '../rules/batch.ts';
import type { NoticeView } from '../rules/notice.ts';
import { solventVapour } from '../rules/solvent-air.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { SiteFacts } from './site-facts.ts';

/** Solvent in the air of the rooms where coats are fresh: what all of them give off added up. */
export function roomVapour(
  facts: () => SiteFacts,
  assess: Pick<BatchAssessor, 'solventQuestion'>,
): (now: number) => NonNullable<NoticeView['vapour']> {
  return (now) => {
    const { batches, coats, moves } = facts();
    const rooms = new Map<string, NonNullable<NoticeView['vapour']>[number]>();
    for (const batch of batches.values()) {
      const placeId = placeOfBatch(moves.get(batch.id) ?? [], now);
      if (batch.closedAt !== null || placeId === null) continue;
      for (const coat of coats.get(batch.id) ?? []) {
        const asked = assess.solventQuestion(coat, placeId, now);
        const vapour = asked ? solventVapour(asked.question) : null;
        if (!asked?.room || !vapour) continue;
        const { id: roomId, name: roomName } = asked.room;
        const before = rooms.get(roomId)?.nowPpm ?? 0;
        rooms.set(roomId, { roomId, roomName, ...vapour, nowPpm: before + vapour.nowPpm });
      }
    }
    return [...rooms.values()];
  };
}
