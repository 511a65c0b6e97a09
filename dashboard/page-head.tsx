import { useEffect, useRef } from 'preact/hooks';
import { pageTitle } from './page-title.ts';
import { useReader } from './reader.ts';
import type { Page } from './router.ts';
import { useShed } from './shed-context.ts';

const links = [
  { kind: 'wall', address: '#/' },
  { kind: 'round', address: '#/round' },
  { kind: 'ahead', address: '#/ahead' },
  { kind: 'air', address: '#/air' },
  { kind: 'brush', address: '#/brush' },
  { kind: 'pot', address: '#/pot' },
  { kind: 'lock-up', address: '#/lock-up' },
  { kind: 'notices', address: '#/notices' },
  { kind: 'setup', address: '#/setup' },
  { kind: 'access', address: '#/access' },
  { kind: 'more', address: '#/more' },
] as const;

/** Which shed, where to go, and what its clock says. */
export function PageHead({ page }: { page: Page }) {
  const { live } = useShed();
  const { words, calendar, figures } = useReader();
  const { frame } = words;
  const overview = live.overview.value;
  const site = overview?.siteName ?? overview?.site ?? 'Boardcure';
  const title = pageTitle(page, overview, frame);
  useEffect(() => {
    document.title = title;
  }, [title]);
  const nav = useRef<HTMLElement>(null);
  // On a phone the links are one line that is pushed along: where one is comes into view.
  useEffect(() => {
    const here = nav.current?.querySelector<HTMLElement>('[aria-current]');
    if (nav.current === null || here == null) return;
    nav.current.scrollLeft = here.offsetLeft - nav.current.offsetLeft - nav.current.clientWidth / 3;
  }, [page.kind]);
  return (
    <header class="head">
      <p class="head-site">{site}</p>
      {overview !== null && (
        <p class="head-clock">
          {overview.speed !== 1 && (
            <span class="head-speed">{frame.simulated(figures.number(overview.speed, 0))}</span>
          )}
          <time>{calendar.exact(live.now.value)}</time>
        </p>
      )}
      <nav ref={nav} aria-label={frame.pages}>
        {links.map((link) => (
          <a
            key={link.kind}
            href={link.address}
            {...(link.kind === page.kind ? { 'aria-current': 'page' as const } : {})}
          >
            {frame.links[link.kind]}
          </a>
        ))}
      </nav>
    </header>
  );
}
