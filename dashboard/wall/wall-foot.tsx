import type { ComponentChildren } from 'preact';
import type { Overview } from '../../daemon/contract/overview.ts';
import { useReader } from '../reader.ts';
import { footNotices } from './wall-rows.ts';

interface WallFootProps {
  overview: Overview;
  /** Where a wall of several pages is turned. */
  children?: ComponentChildren;
}

/** The foot of the wall: what belongs to no board, and the caution that is always there. */
export function WallFoot({ overview, children }: WallFootProps) {
  const { words, say } = useReader();
  const { cautions, wall } = words;
  const notices = footNotices(overview);
  const first = notices[0];
  return (
    <footer class="wall-foot">
      {children}
      {first !== undefined && (
        <p class="wall-notice">{first.kind === 'rags' ? cautions.ragsLine : say(first)}</p>
      )}
      {notices.length > 1 && (
        <a class="wall-more" href="#/notices">
          {wall.moreNotices(notices.length - 1)}
        </a>
      )}
      <p class="wall-caution">
        {first?.kind === 'rags' ? null : cautions.wall} <a href="#/cautions">{cautions.link}</a>
      </p>
    </footer>
  );
}
