import type { Overview } from '../daemon/contract/overview.ts';
import type { Page } from './router.ts';
import type { FirstWords } from './words/words.ts';

const APP = 'Boardcure';

/**
 * What the browser writes over a page and into its history: “The pot · Shed · Boardcure”.
 *
 * @param overview - null while nothing was heard yet
 */
export function pageTitle(
  page: Page,
  overview: Pick<Overview, 'site' | 'siteName' | 'places'> | null,
  { titles }: Pick<FirstWords['frame'], 'titles'>,
): string {
  const batches = overview?.places.flatMap((place) => place.batches) ?? [];
  const batch = 'id' in page ? batches.find(({ id }) => id === page.id) : undefined;
  const site = overview?.siteName ?? overview?.site;
  return [
    // The wall is what the site is known by.
    page.kind === 'wall' ? undefined : titles[page.kind],
    batch?.name,
    site === APP ? undefined : site,
    APP,
  ]
    .filter((part) => part !== undefined && part !== '')
    .join(' · ');
}
