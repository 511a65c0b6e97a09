import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useReader } from './reader.ts';
import { useShed } from './shed-context.ts';

type Loading<P> = () => Promise<ComponentType<P>>;

/**
 * A page whose script, style and words are fetched when it is first opened: the wall of a slow tablet
 * does not wait for them.
 */
export function later<P extends object>(load: Loading<P>): ComponentType<P> {
  const useLoaded = loading(load);
  return function Later(given: P) {
    const { Part, isAway } = useLoaded();
    const { words } = useReader();
    if (Part !== null) return <Part {...given} />;
    return (
      <main class="page" aria-busy={!isAway}>
        {isAway && <p>{words.frame.notFetched}</p>}
      </main>
    );
  };
}

/** Likewise what is no page of its own: nothing stands in its place until it is here. */
export function laterPart<P extends object>(load: Loading<P>): ComponentType<P> {
  const useLoaded = loading(load);
  return function LaterPart(given: P) {
    const { Part } = useLoaded();
    return Part === null ? null : <Part {...given} />;
  };
}

/** How long after it could not be fetched it is tried again. */
const AGAIN_MS = 3000;

function loading<P>(load: Loading<P>) {
  let loaded: ComponentType<P> | null = null;
  return function useLoaded(): { Part: ComponentType<P> | null; isAway: boolean } {
    const [Part, setPart] = useState(() => loaded);
    const [isAway, setAway] = useState(false);
    const { readerChoice } = useShed();
    useEffect(() => {
      if (loaded !== null) return;
      let isGone = false;
      let timer: ReturnType<typeof setTimeout>;
      const fetchAll = () =>
        Promise.all([load(), import('./page-start.ts'), readerChoice.fetchRest()]).then(
          ([part]) => {
            loaded = part;
            setPart(() => part);
          },
          () => {
            if (isGone) return;
            setAway(true);
            timer = setTimeout(fetchAll, AGAIN_MS);
          },
        );
      void fetchAll();
      return () => {
        isGone = true;
        clearTimeout(timer);
      };
    }, [readerChoice]);
    return { Part, isAway };
  };
}
