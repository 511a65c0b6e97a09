import { useCallback, useEffect } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** What holds the batch back from its next job, and what would help most; nothing when it is ready. */
export function WhatHelps({ batch }: { batch: Batch }) {
  const { api } = useShed();
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
      <h2 id="helps-title">What would help</h2>
      <p class="helps-why">{holdsBack.map((reason) => reason.text).join(' ')}</p>
      <ol class="helps-list">
        {helps.map((help) => (
          <li key={help.kind}>{help.text}</li>
        ))}
      </ol>
    </section>
  );
}
