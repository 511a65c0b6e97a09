import { effect } from '@preact/signals';
import type { Live } from '../live.ts';
import { pageOf } from '../router.ts';
import { onWake } from './waking.ts';

/**
 * The script that a start page begins with; its name holds the hash of what is in it.
 *
 * @param html - of the start page
 * @returns its path as it is written there; null when there is none
 */
export function scriptOf(html: string): string | null {
  return /<script[^>]*\stype="module"[^>]*\ssrc="([^"]+)"/.exec(html)?.[1] ?? null;
}

/** What is known of this page’s build and the daemon’s. */
export interface Builds {
  /** Script of this page. */
  readonly running: string;
  /** Script of the page that the daemon hands out now; null when that cannot be told. */
  readonly offered: string | null;
  /** For which script this page was loaded anew already. */
  readonly triedFor: string | null;
}

/** Whether the page is to be loaded anew; once for each build, whatever a cache hands out. */
export function isOutdated({ running, offered, triedFor }: Builds): boolean {
  return offered !== null && offered !== running && offered !== triedFor;
}

const KEY = 'boardcure.build';

/**
 * Loads the page anew once the daemon was updated: at once on the wall, elsewhere when that page is left, so
 * that nothing that was typed is lost.
 *
 * @param running - script of this page, as the start page names it
 */
export function watchBuild(live: Pick<Live, 'isMissing'>, running: string | null): void {
  if (running === null) return;
  let outdatedBy: string | null = null;

  const reloadIfFree = (isLeaving: boolean) => {
    if (outdatedBy === null) return;
    const isFree = isLeaving || pageOf(location.hash).kind === 'wall';
    if (!isFree || document.querySelector('dialog[open]') !== null) return;
    try {
      sessionStorage.setItem(KEY, outdatedBy);
    } catch {
      // Without it a page might be loaded over and over.
      return;
    }
    location.reload();
  };

  async function look(): Promise<void> {
    try {
      const response = await fetch('./', { cache: 'no-store' });
      const offered = response.ok ? scriptOf(await response.text()) : null;
      const builds = { running: running ?? '', offered, triedFor: sessionStorage.getItem(KEY) };
      outdatedBy = isOutdated(builds) ? offered : null;
    } catch {
      // Away again; it is looked at when it is back.
    }
    reloadIfFree(false);
  }

  let wasMissing = false;
  effect(() => {
    const isMissing = live.isMissing.value;
    if (wasMissing && !isMissing) void look();
    wasMissing = isMissing;
  });
  onWake(() => void look());
  addEventListener('hashchange', () => reloadIfFree(true));
}
