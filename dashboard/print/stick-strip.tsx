import { useCallback } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { queryOfSheet } from '../pot/pot-query.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { Sheet } from './sheet.tsx';
import { longestStripMm, stripMarks } from './strip-marks.ts';

const stripWidthMm = 48;
const checkMm = 100;

/** A strip for the stirring stick with a mark for each part, at true size. */
export function StickStrip({ given }: { given: URLSearchParams }) {
  const { api } = useShed();
  const asked = given.toString();
  const ask = useCallback(
    () => api.call('mixture', { query: queryOfSheet(new URLSearchParams(asked)) }),
    [api, asked],
  );
  const { replied } = useReply(ask);
  if (replied.kind === 'loading') return <main class="page" aria-busy="true" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>The strip cannot be drawn</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const { pot, coatName } = replied.reply;
  if (pot === null) {
    return (
      <main class="page">
        <h1>The strip cannot be drawn</h1>
        <p>
          Nobody said how wide the pot is. <a href="#/pot">Back to the pot</a>
        </p>
      </main>
    );
  }
  const { heightMm, marks } = stripMarks(pot);
  return (
    <Sheet
      title="Strip for the stirring stick"
      how="Print it at 100 %, not fitted to the page, and hold a ruler to the line of 100 mm before you cut. The foot of the strip stands on the bottom of the pot."
    >
      {heightMm > longestStripMm && (
        <p class="field-fault">
          The strip is {heightMm} mm long and does not fit on a sheet of A4: take a wider pot or mix
          less at once.
        </p>
      )}
      <div class="strip-sheet">
        <svg
          class="strip"
          width={`${stripWidthMm}mm`}
          height={`${heightMm}mm`}
          viewBox={`0 0 ${stripWidthMm} ${heightMm}`}
          role="img"
          aria-label={`Strip with marks at ${marks.map((mark) => mark.words).join(', ')} cm`}
        >
          <rect
            x="0.1"
            y="0.1"
            width={stripWidthMm - 0.2}
            height={heightMm - 0.2}
            class="strip-cut"
          />
          <text x="1.5" y="5" class="strip-words">
            {coatName ?? 'Mixture'}
          </text>
          {marks.map((mark) => (
            <g key={mark.words}>
              <line
                class="strip-mark"
                x1="0"
                x2="12"
                y1={heightMm - mark.fromBottomMm}
                y2={heightMm - mark.fromBottomMm}
              />
              <line
                class="strip-lead"
                x1="12"
                x2="14"
                y1={heightMm - mark.fromBottomMm}
                y2={heightMm - mark.labelMm}
              />
              <text x="14.5" y={heightMm - mark.labelMm + 1.1} class="strip-words">
                {mark.words}
              </text>
            </g>
          ))}
        </svg>
        <svg
          class="strip-check"
          width={`${checkMm}mm`}
          height="9mm"
          viewBox={`0 0 ${checkMm} 9`}
          role="img"
          aria-label="A line of 100 millimetres to measure against"
        >
          <path d={`M0.15 0.5v4M${checkMm - 0.15} 0.5v4M0 2.5h${checkMm}`} class="strip-mark" />
          <text x="2" y="7.8" class="strip-words">
            this line is 100 mm long
          </text>
        </svg>
      </div>
    </Sheet>
  );
}
