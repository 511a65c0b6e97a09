import { useCallback } from 'preact/hooks';
import { plainList } from '../format/lists.ts';
import { useOwnName } from '../own-name.ts';
import { queryOfSheet } from '../pot/pot-query.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { AwaitedSheet } from './awaited-sheet.tsx';
import { Sheet } from './sheet.tsx';
import { checkLineMm, longestStripMm, stripMarks, wordsAtMm } from './strip-marks.ts';

/** A strip for the stirring stick with a mark for each part, at true size. */
export function StickStrip({ given }: { given: URLSearchParams }) {
  const { api } = useShed();
  const { words, figures, units } = useReader();
  const ownName = useOwnName();
  const { print, things } = words;
  const { strip } = print;
  const asked = given.toString();
  const ask = useCallback(
    () => api.call('mixture', { query: queryOfSheet(new URLSearchParams(asked)) }),
    [api, asked],
  );
  const { replied } = useReply(ask);
  if (replied.kind !== 'there') {
    return <AwaitedSheet replied={replied} notDrawn={strip.notDrawn} />;
  }
  const { pot, coatName } = replied.reply;
  if (pot === null) {
    return (
      <main class="page">
        <h1>{strip.notDrawn}</h1>
        <p>{strip.noWidth(<a href="#/pot">{strip.back}</a>)}</p>
      </main>
    );
  }
  const { widthMm, heightMm, marks } = stripMarks(pot, ({ part, stickCm }) =>
    strip.mark(things.ingredients[part], figures.mark(stickCm)),
  );
  const checkMm = checkLineMm[units];
  const check = figures.asSet('lengthMm', checkMm);
  return (
    <Sheet title={strip.title} how={strip.how(check)}>
      {heightMm > longestStripMm[units] && (
        <p class="field-fault">{strip.tooLong[units](figures.measure('lengthMm', heightMm))}</p>
      )}
      <div class="strip-sheet">
        <svg
          class="strip"
          width={`${widthMm}mm`}
          height={`${heightMm}mm`}
          viewBox={`0 0 ${widthMm} ${heightMm}`}
          role="img"
          aria-label={strip.spoken(
            plainList(marks.map((mark) => mark.words)),
            figures.unit('lengthCm'),
          )}
        >
          <rect x="0.1" y="0.1" width={widthMm - 0.2} height={heightMm - 0.2} class="strip-cut" />
          <text x="1.5" y="5" class="strip-words">
            {coatName === null ? print.mixture : ownName(coatName)}
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
              <text x={wordsAtMm} y={heightMm - mark.labelMm + 1.1} class="strip-words">
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
          aria-label={strip.checkSpoken(check)}
        >
          <path d={`M0.15 0.5v4M${checkMm - 0.15} 0.5v4M0 2.5h${checkMm}`} class="strip-mark" />
          <text x="2" y="7.8" class="strip-words">
            {strip.check(check)}
          </text>
        </svg>
      </div>
    </Sheet>
  );
}
