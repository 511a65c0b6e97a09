import { useCallback, useEffect, useId, useMemo, useRef, useState } from 'preact/hooks';
import { useReader } from '../reader.ts';
import '../styles/chart.css';
import { ChartControls } from './chart-controls.tsx';
import { ChartFiles } from './chart-files.tsx';
import { ChartTable } from './chart-table.tsx';
import { CursorLine } from './cursor-line.tsx';
import { type GestureState, watchGestures } from './gestures.ts';
import { MarkKey } from './mark-key.tsx';
import { panelMarks } from './marks.ts';
import { newestTold } from './panel.ts';
import { PanelFigure } from './panel-figure.tsx';
import { isWhole, type Range, within } from './range.ts';
import { type CoatGates, toPanels } from './to-panels.ts';
import { type CurveSource, useCurves } from './use-curves.ts';
import { wholeRangeOf } from './whole-range.ts';
import { stretchWords } from './writing.ts';
import { createZoneClock } from './zone-clock.ts';

interface ChartBlockProps {
  /** What the curves are of; also over a picture and in the name of a file. */
  title: string;
  /** Must stay the same between renders. */
  source: CurveSource;
  /** The coat whose jobs are drawn; null without one. */
  coat: CoatGates | null;
  /** Changes when there may be more to show. */
  news: unknown;
}

/** Fewer points than a chart has pixels are enough: a season is drawn at once. */
const MOST_POINTS = 1_000;
const usualPoints = () => Math.round(Math.min(MOST_POINTS, Math.max(360, innerWidth * 0.8)));

/** Curves below each other on one time axis, to be looked at closer, with a table and files. */
export function ChartBlock({ title, source, coat, news }: ChartBlockProps) {
  const reader = useReader();
  const { units, words } = reader;
  const { chart } = words;
  const syncKey = useId();
  const stack = useRef<HTMLDivElement>(null);
  const clock = useMemo(() => createZoneClock(), []);
  const points = useMemo(usualPoints, []);
  const [seen, setSeen] = useState<Range | null>(null);
  const [pointedAt, setPointedAt] = useState<number | null>(null);
  const [stoodAt, setStoodAt] = useState<number | null>(null);
  const cursorAt = stoodAt ?? pointedAt;
  const point = useCallback((at: number | null) => {
    setPointedAt(at);
    // Whoever points takes the cursor from the keys.
    if (at !== null) setStoodAt(null);
  }, []);
  const whole = useRef<Range | null>(null);
  const read = useCurves(source, points, seen, whole.current, news);
  useEffect(() => setSeen(null), [source]);

  const all = useMemo(
    () => (read.whole === null ? null : wholeRangeOf(read.whole.curves)),
    [read.whole],
  );
  whole.current = all;
  const range = all === null ? null : seen === null ? all : within(seen, all);
  const known = seen !== null && read.close !== null ? read.close : read.whole;
  const toAt = Date.parse(known?.curves.to ?? '') / 1000;
  const panels = useMemo(
    () => (known === null ? [] : toPanels({ ...known, coat, units })),
    [known, coat, units],
  );
  const newestAt = useMemo(() => newestTold(panels, toAt), [panels, toAt]);
  const marks = useMemo(() => panelMarks(read.whole?.curves.marks ?? []), [read.whole]);
  const look = useCallback((next: Range) => {
    const { current } = whole;
    if (current !== null) setSeen(isWhole(next, current) ? null : next);
  }, []);

  const state = useRef<GestureState | null>(null);
  state.current =
    range === null || all === null || known === null
      ? null
      : {
          ...{ range, whole: all, cursorAt: stoodAt, newestAt },
        };
  const isThere = panels.length > 0;
  useEffect(() => {
    const target = stack.current;
    if (target === null || !isThere) return;
    const nowhere = { from: 0, to: 1 };
    const unknown = { range: nowhere, whole: nowhere, cursorAt: null, newestAt: 0 };
    return watchGestures(target, () => state.current ?? unknown, look, setStoodAt);
  }, [isThere, look]);

  const seenMarks = useMemo(
    () => (range === null ? [] : marks.filter(({ at }) => at >= range.from && at <= range.to)),
    [marks, range],
  );

  if (known === null || range === null || all === null) {
    return <p class="quiet">{read.isFailed ? chart.notRead : ' '}</p>;
  }
  if (!isThere) return <p class="quiet">{chart.nothing}</p>;
  return (
    <div class="chart-block">
      <ChartControls title={title} range={range} whole={all} onLook={look} />
      <CursorLine panels={panels} at={cursorAt} range={range} isSpoken={stoodAt !== null} />
      <section
        class="chart-stack"
        ref={stack}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: its keys look closer and move along; buttons do the same.
        tabIndex={0}
        aria-label={chart.controls.title(title)}
      >
        <MarkKey marks={seenMarks} cursorAt={cursorAt} range={range} />
        {panels.map((panel, i) => (
          <PanelFigure
            key={panel.kind}
            panel={panel}
            range={range}
            marks={marks}
            clock={clock}
            syncKey={syncKey}
            isFirst={i === 0}
            isLast={i === panels.length - 1}
            cursorAt={cursorAt}
            stoodAt={stoodAt}
            onCursor={point}
          />
        ))}
      </section>
      <div class="footnote chart-notes">
        <p>{chart.controls.how}</p>
        {known.curves.stepS >= 60 && (
          <p>{chart.bandNote(stretchWords(known.curves.stepS, reader))}</p>
        )}
        {panels.some(({ kind }) => kind === 'sum') && <p>{chart.sumNote}</p>}
        {panels.some(({ kind }) => kind === 'changes') && <p>{chart.changesNote}</p>}
      </div>
      <ChartFiles
        title={title}
        known={known}
        panels={panels}
        marks={seenMarks}
        range={range}
        clock={clock}
      />
      <ChartTable panels={panels} marks={seenMarks} range={range} clock={clock} />
    </div>
  );
}
