import { useEffect, useMemo, useRef } from 'preact/hooks';
import { useReader } from '../reader.ts';
import { type DrawnPanel, drawPanel } from './draw-panel.ts';
import type { Panel, PanelMark } from './panel.ts';
import { PanelKey } from './panel-key.tsx';
import type { Range } from './range.ts';
import { panelStretch, panelUnit, panelWriting, spokenPanel } from './writing.ts';
import type { ZoneClock } from './zone-clock.ts';

interface PanelFigureProps {
  panel: Panel;
  range: Range;
  marks: readonly PanelMark[];
  clock: ZoneClock;
  syncKey: string;
  isFirst: boolean;
  isLast: boolean;
  /** Epoch s; null while nobody points. */
  cursorAt: number | null;
  /** Where the keys led the cursor, epoch s; null while they did not. */
  stoodAt: number | null;
  onCursor: (at: number | null) => void;
}

/** One panel: what it shows in words and figures, and the drawing. */
export function PanelFigure(props: PanelFigureProps) {
  const { panel, range, marks, clock, syncKey, isFirst, isLast } = props;
  const { cursorAt, stoodAt, onCursor } = props;
  const reader = useReader();
  const { words, units } = reader;
  const { kind } = panel;
  const target = useRef<HTMLDivElement>(null);
  const drawn = useRef<DrawnPanel | null>(null);
  const writing = useMemo(() => panelWriting(kind, reader, clock), [kind, reader, clock]);
  const view = { panel, range, marks, writing };
  const latest = useRef(view);
  latest.current = view;
  const cursor = useRef(onCursor);
  cursor.current = onCursor;

  useEffect(() => {
    if (target.current === null) return;
    const made = drawPanel(target.current, latest.current, {
      ...{ syncKey, isFirst, isLast, scale: 1 },
      stretch: panelStretch(kind, units),
      onCursor: (at) => cursor.current(at),
    });
    drawn.current = made;
    return () => {
      drawn.current = null;
      made.close();
    };
  }, [kind, syncKey, isFirst, isLast, units]);

  // The first showing is the drawing itself.
  const isNew = useRef(true);
  useEffect(() => {
    if (isNew.current) isNew.current = false;
    else drawn.current?.show({ panel, range, marks, writing });
  }, [panel, range, marks, writing]);

  // Where it stands hangs on what is seen, too.
  useEffect(() => drawn.current?.stand(stoodAt), [stoodAt, range]);

  return (
    <figure class={`panel-figure panel-${kind}`}>
      <figcaption class="panel-caption">
        <p class="panel-name">
          {words.chart.panels[kind]} <span class="panel-unit">{panelUnit(kind, reader)}</span>
        </p>
        <PanelKey panel={panel} at={cursorAt} range={range} />
      </figcaption>
      <div class="chart" ref={target} role="img" aria-label={spokenPanel(panel, range, reader)} />
    </figure>
  );
}
