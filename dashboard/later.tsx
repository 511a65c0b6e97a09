import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useReader } from './reader.ts';
import { useShed } from './shed-context.ts';

type Loading<P> = () => Promise<ComponentType<P>>;

/**
 * A page whose script and words are fetched when it is first opened: the wall of a slow tablet does
 * not wait for them.
 */
export function later<P extends object>(load: Loading<P>): ComponentType<P> {
  let loaded: ComponentType<P> | null = null;
  return function Later(given: P) {
    const [Page, setPage] = useState(() => loaded);
    const [isAway, setAway] = useState(false);
    const { readerChoice } = useShed();
    const { words } = useReader();
    useEffect(() => {
      if (loaded !== null) return;
      Promise.all([load(), readerChoice.fetchRest()]).then(
        ([page]) => {
          loaded = page;
          setPage(() => page);
        },
        () => setAway(true),
      );
    }, [readerChoice]);
    if (Page !== null) return <Page {...given} />;
    return (
      <main class="page" aria-busy={!isAway}>
        {isAway && <p>{words.frame.notFetched}</p>}
      </main>
    );
  };
}
