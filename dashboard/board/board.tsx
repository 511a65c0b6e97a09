import { useMemo, useRef } from 'preact/hooks';
import type { Gate } from '../../daemon/contract/gate.ts';
import { plainList } from '../format/lists.ts';
import { useReader } from '../reader.ts';
import { useStripWidth } from '../use-strip-width.ts';
import { type BoardScale, kerfNames } from './board-scale.ts';
import { BOARD_HEIGHT, BOARD_LENGTH, brushEdge, grainOf } from './grain.ts';

interface BoardProps {
  /** Id of the batch: the same batch has the same board for life. */
  seed: string;
  scale: BoardScale;
  /** Names under the kerfs, where there is room for them. */
  named?: boolean;
  /** What a screen reader says instead of the drawing. */
  spoken: string;
}

const percent = (share: number) => `${Math.round(share * 10_000) / 100}%`;

/** One board of the batch: how far paint has dried, a kerf for each job, a band for the doubt. */
export function Board({ seed, scale, named = false, spoken }: BoardProps) {
  const edge = useMemo(() => brushEdge(seed), [seed]);
  return (
    <div class={named ? 'board board-named' : 'board'} role="img" aria-label={spoken}>
      <div class="board-wood">
        <Grain seed={seed} fit="strip" />
        {scale.front > 0 && (
          <div class="board-paint" style={{ width: percent(scale.front) }}>
            <svg
              class="board-brush"
              viewBox={`0 0 20 ${BOARD_HEIGHT}`}
              preserveAspectRatio="none"
              aria-hidden="true"
            >
              <path d={edge} />
            </svg>
          </div>
        )}
        {scale.band !== null && (
          <div
            class="board-band"
            style={{
              left: percent(scale.band.from),
              width: percent(scale.band.to - scale.band.from),
            }}
          />
        )}
        {scale.kerfs.map((kerf) => (
          <div key={kerf.gate} class="board-kerf" style={{ left: percent(kerf.position) }} />
        ))}
      </div>
      {named && <KerfNames scale={scale} />}
    </div>
  );
}

/** Room that a letter takes, and between two names, px at the usual size of text. */
const LETTER_PX = 9;
const GAP_PX = 12;

/** The jobs under their kerfs, on as many lines as their names need. */
function KerfNames({ scale }: { scale: BoardScale }) {
  const { words } = useReader();
  const strip = useRef<HTMLDivElement>(null);
  const widthPx = useStripWidth(strip);
  const nameOf = (gates: readonly Gate[]) => plainList(gates.map((gate) => words.jobs[gate].noun));
  const names = kerfNames(
    scale.kerfs,
    (gates) => (nameOf(gates).length * LETTER_PX + GAP_PX) / widthPx,
  );
  const lines = 1 + Math.max(1, ...names.map(({ line }) => line));
  return (
    <div ref={strip} class="board-names" style={{ '--lines': String(lines) }} aria-hidden="true">
      {names.map(({ gates, position, line, anchor }) => (
        <span
          key={position}
          class={`board-name board-name-${anchor}`}
          style={{ left: percent(position), '--line': String(line) }}
        >
          {nameOf(gates)}
        </span>
      ))}
    </div>
  );
}

interface GrainProps {
  seed: string;
  /** Pressed into a narrow strip, or in its own proportions as the ground of a whole board. */
  fit: 'strip' | 'ground';
}

/** The timber alone. */
export function Grain({ seed, fit }: GrainProps) {
  const grain = useMemo(() => grainOf(seed), [seed]);
  return (
    <svg
      class="grain"
      viewBox={`0 0 ${BOARD_LENGTH} ${BOARD_HEIGHT}`}
      preserveAspectRatio={fit === 'strip' ? 'none' : 'xMinYMid slice'}
      aria-hidden="true"
    >
      <path d={grain.lines} />
      {grain.knots.map((knot) => (
        <ellipse key={knot.x} cx={knot.x} cy={knot.y} rx={knot.rx} ry={knot.ry} />
      ))}
    </svg>
  );
}
