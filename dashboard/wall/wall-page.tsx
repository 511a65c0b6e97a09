import { useComputed } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Overview } from '../../daemon/contract/overview.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { FirstSteps } from './first-steps.tsx';
import { useLayout } from './use-layout.ts';
import { useScreen } from './use-screen.ts';
import { useTurning } from './use-turning.ts';
import { WallBoard } from './wall-board.tsx';
import { WallFoot } from './wall-foot.tsx';
import { pagesOf, urgencyOf } from './wall-pages.ts';
import { isFresh, wallRows, wrongAt } from './wall-rows.ts';
import { WallTurner } from './wall-turner.tsx';

/** The wall: every batch one board, read across the shed. */
export function WallPage() {
  const { live } = useShed();
  const overview = live.overview.value;
  useScreen(live.deviceNow);
  if (overview === null) return <main class="page" />;
  const hasBoards = wallRows(overview).length > 0;
  return hasBoards ? <Boards overview={overview} /> : <FirstSteps overview={overview} />;
}

/** No time on the wall is told more exactly, so it is drawn no more often, ms. */
const STEP_MS = 10_000;

function Boards({ overview }: { overview: Overview }) {
  const { live, device } = useShed();
  const { words } = useReader();
  const now = useComputed(() => Math.floor(live.now.value / STEP_MS) * STEP_MS).value;
  const isLost = useComputed(() => live.connection.value.kind === 'lost').value;
  const wall = useRef<HTMLElement>(null);
  // When the daemon is lost the banner says it all.
  const rows = wallRows(overview).map((row) => {
    const wrong = isLost ? [] : wrongAt(row, overview);
    const isTroubled = wrong.length > 0;
    return { ...row, wrong, isTroubled, urgency: urgencyOf(row.sign, isTroubled) };
  });
  const layout = useLayout(wall, rows.length, words.signs, isLost);
  const pages = pagesOf(rows, layout.perPage);
  const turned = useTurning({
    pages: pages.length,
    seconds: device.choice.value.turnSeconds,
    clock: live.deviceNow,
  });
  return (
    <main class="wall" ref={wall}>
      <h1 class="spoken">{words.wall.title}</h1>
      <ul
        class={`wall-boards wall-${layout.form}`}
        style={{
          '--columns': String(layout.columns),
          '--rows': String(layout.rows),
          '--letter': `${layout.letterPx}px`,
          '--rise': String(layout.rise),
          '--word': String(layout.wordWidths),
        }}
      >
        {(layout.isMeasured ? (pages[turned.page] ?? []) : []).map((row) => (
          <WallBoard
            key={row.key}
            row={row}
            now={now}
            fresh={isFresh(row, isLost)}
            wrong={row.wrong}
          />
        ))}
      </ul>
      <WallFoot overview={overview}>
        {pages.length > 1 && <WallTurner pages={pages} turned={turned} />}
      </WallFoot>
    </main>
  );
}
