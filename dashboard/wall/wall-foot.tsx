import type { Overview } from '../../daemon/contract/overview.ts';
import { ragsLine, wallCaution } from '../words/caution-words.ts';
import { footNotices } from './wall-rows.ts';

/** The foot of the wall: what belongs to no board, and the caution that is always there. */
export function WallFoot({ overview }: { overview: Overview }) {
  const notices = footNotices(overview);
  const first = notices[0];
  return (
    <footer class="wall-foot">
      {first !== undefined && (
        <p class="wall-notice">{first.kind === 'rags' ? ragsLine : first.text}</p>
      )}
      {notices.length > 1 && (
        <a class="wall-more" href="#/notices">
          and {notices.length - 1} more
        </a>
      )}
      <p class="wall-caution">
        {first?.kind === 'rags' ? null : wallCaution} <a href="#/cautions">Cautions</a>
      </p>
    </footer>
  );
}
