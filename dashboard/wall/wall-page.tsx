import { useShed } from '../shed-context.ts';
import { FirstSteps } from './first-steps.tsx';
import { WallBoard } from './wall-board.tsx';
import { columnsFor } from './wall-columns.ts';
import { WallFoot } from './wall-foot.tsx';
import { isFresh, wallRows, wrongAt } from './wall-rows.ts';

/** The wall: every batch one board, read across the shed. */
export function WallPage() {
  const { live, calendar } = useShed();
  const overview = live.overview.value;
  if (overview === null) return <main class="page" />;
  const rows = wallRows(overview);
  const now = live.now.value;
  const lost = live.connection.value.kind === 'lost';
  if (rows.length === 0) return <FirstSteps overview={overview} />;
  const columns = columnsFor(rows.length);
  // When the daemon is lost the banner says it all.
  const wrongs = rows.map((row) => (lost ? [] : wrongAt(row, overview, now)));
  const tall = rows.length <= 2 ? ' wall-tall' : '';
  const troubled = wrongs.some((wrong) => wrong.length > 0) ? ' wall-troubled' : '';
  return (
    <main class="wall">
      <h1 class="spoken">The wall</h1>
      <ul
        class={`wall-boards wall-columns-${columns}${tall}${troubled}`}
        style={{ '--rows': String(Math.ceil(rows.length / columns)), '--columns': String(columns) }}
      >
        {rows.map((row, i) => (
          <WallBoard
            key={row.key}
            row={row}
            now={now}
            calendar={calendar}
            fresh={isFresh(row, lost)}
            wrong={wrongs[i] ?? []}
          />
        ))}
      </ul>
      <WallFoot overview={overview} />
    </main>
  );
}
