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
  const tall = rows.length <= 2 ? ' wall-tall' : '';
  return (
    <main class="wall">
      <h1 class="spoken">The wall</h1>
      <ul
        class={`wall-boards wall-columns-${columns}${tall}`}
        style={{ '--rows': String(Math.ceil(rows.length / columns)), '--columns': String(columns) }}
      >
        {rows.map((row) => (
          <WallBoard
            key={row.key}
            row={row}
            now={now}
            calendar={calendar}
            fresh={isFresh(row, lost)}
            // When the daemon is lost the banner says it all.
            wrong={lost ? [] : wrongAt(row, overview, now)}
          />
        ))}
      </ul>
      <WallFoot overview={overview} />
    </main>
  );
}
