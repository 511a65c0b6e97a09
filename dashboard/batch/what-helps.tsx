import { useCallback, useEffect } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** What holds the batch back from its next job, and what would help most; nothing when it is ready. */
export function WhatHelps({ batch }: { batch: Batch }) {
  const { api } = useShed();
  const { words } = useReader();
  const { id } = batch;
  const { replied, again } = useReply(
    useCallback(() => api.call('whatHelps', { params: { id } }), [api, id]),
  );
  // The batch is read anew when something changed; so is this.
  useEffect(again, [batch]);
  if (replied.kind !== 'there' || replied.reply.holdsBack.length === 0) return null;
  const { holdsBack, helps } = replied.reply;
  return (
    <section class="helps" aria-labelledby="helps-title">
      <h2 id="helps-title">{words.batch.helps}</h2>
      {holdsBack.map((reason) => (
        <p key={reason.code} class="helps-why">
          <Said sentence={reason} />
        </p>
      ))}
      <ol class="helps-list">
        {helps.map((help) => (
          <li key={help.kind}>
            <Said sentence={help} />
          </li>
        ))}
      </ol>
    </section>
  );
}
