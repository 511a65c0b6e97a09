import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../daemon/contract/batch.ts';
import type { Problem } from '../../daemon/contract/problem.ts';
import { useShed } from '../shed-context.ts';

export type Loaded =
  | { readonly kind: 'loading' }
  | {
      readonly kind: 'there';
      readonly batch: Batch;
      /** Since when it is not heard anew, this device’s clock; null while it is fresh. */
      readonly oldSince: number | null;
    }
  | { readonly kind: 'failed'; readonly problem: Problem };

/** The batch is not read again sooner than this, however fast readings come. */
const REST_MS = 2_000;

/**
 * Reads a batch, and again whenever it may have changed.
 *
 * @returns what is there, and a way to read it at once
 */
export function useBatch(id: string): { loaded: Loaded; reload: () => void } {
  const { api, live } = useShed();
  const [loaded, setLoaded] = useState<Loaded>({ kind: 'loading' });
  const readAt = useRef(0);
  const wanted = useRef(id);
  wanted.current = id;

  const reload = useCallback(async () => {
    readAt.current = Date.now();
    const batch = await api.call('readBatch', { params: { id } });
    if (wanted.current !== id) return;
    if (batch.kind === 'problem') {
      // What was read before is still worth seeing; the banner says that it is old.
      setLoaded((before) =>
        before.kind === 'there' ? before : { kind: 'failed', problem: batch.problem },
      );
    } else {
      const { reply, oldSince = null } = batch;
      setLoaded((before) =>
        // What this page heard itself is newer than what was kept.
        oldSince !== null && before.kind === 'there'
          ? before
          : { kind: 'there', batch: reply, oldSince },
      );
    }
  }, [api, id]);

  const news = live.changesOf(id);
  const overview = live.overview.value;
  // `news` and `overview` are there to say when to read again.
  useEffect(() => {
    const rest = readAt.current + REST_MS - Date.now();
    const timer = setTimeout(() => void reload(), Math.max(0, rest));
    return () => clearTimeout(timer);
  }, [reload, news, overview]);

  return { loaded, reload: () => void reload() };
}
