import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

type Loading<P> = () => Promise<ComponentType<P>>;

/**
 * A page whose script is fetched when it is first opened: the wall of a slow tablet does not wait
 * for it.
 */
export function later<P extends object>(load: Loading<P>): ComponentType<P> {
  let loaded: ComponentType<P> | null = null;
  return function Later(given: P) {
    const [Page, setPage] = useState(() => loaded);
    const [isAway, setAway] = useState(false);
    useEffect(() => {
      if (loaded !== null) return;
      load().then(
        (page) => {
          loaded = page;
          setPage(() => page);
        },
        () => setAway(true),
      );
    }, []);
    if (Page !== null) return <Page {...given} />;
    return (
      <main class="page" aria-busy={!isAway}>
        {isAway && <p>This page could not be fetched. Load it again once the daemon answers.</p>}
      </main>
    );
  };
}
