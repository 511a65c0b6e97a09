import { useMemo } from 'preact/hooks';
import { plainList } from '../format/lists.ts';
import { useReader } from '../reader.ts';
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
  const { words, locale } = useReader();
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
      {named &&
        kerfNames(scale.kerfs).map((name) => (
          <span
            key={name.position}
            class={`board-name${name.low ? ' board-name-low' : ''}${name.position > 0.88 ? ' board-name-end' : ''}`}
            style={{ left: percent(name.position) }}
            aria-hidden="true"
          >
            {plainList(
              name.gates.map((gate) => words.jobs[gate].noun),
              locale,
            )}
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
      {grain.lines.map((line) => (
        <path key={line} d={line} />
      ))}
      {grain.knots.map((knot) => (
        <ellipse key={knot.x} cx={knot.x} cy={knot.y} rx={knot.rx} ry={knot.ry} />
      ))}
    </svg>
  );
}
