import { useEffect } from 'preact/hooks';
import type { Page } from './router.ts';
import { useShed } from './shed-context.ts';

const links = [
  { kind: 'wall', address: '#/', words: 'Wall' },
  { kind: 'round', address: '#/round', words: 'Round' },
  { kind: 'ahead', address: '#/ahead', words: 'What comes' },
  { kind: 'brush', address: '#/brush', words: 'Brush' },
  { kind: 'pot', address: '#/pot', words: 'Pot' },
  { kind: 'lock-up', address: '#/lock-up', words: 'Lock up' },
  { kind: 'notices', address: '#/notices', words: 'Notices' },
  { kind: 'setup', address: '#/setup', words: 'Set up' },
  { kind: 'access', address: '#/access', words: 'Access' },
  { kind: 'more', address: '#/more', words: 'More' },
] as const;

/** Which shed, where to go, and what its clock says. */
export function PageHead({ page }: { page: Page }) {
  const { live, calendar } = useShed();
  const overview = live.overview.value;
  const site = overview?.site ?? 'Boardcure';
  useEffect(() => {
    document.title = site === 'Boardcure' ? site : `${site} · Boardcure`;
  }, [site]);
  return (
    <header class="head">
      <p class="head-site">{site}</p>
      <nav aria-label="Pages">
        {links.map((link) => (
          <a
            key={link.kind}
            href={link.address}
            {...(link.kind === page.kind ? { 'aria-current': 'page' as const } : {})}
          >
            {link.words}
          </a>
        ))}
      </nav>
      {overview !== null && (
        <p class="head-clock">
          {overview.speed !== 1 && (
            <span class="head-speed">simulated, {Math.round(overview.speed)} × faster</span>
          )}
          <time>{calendar.exact(live.now.value)}</time>
        </p>
      )}
    </header>
  );
}
