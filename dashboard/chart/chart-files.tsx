import { useRef, useState } from 'preact/hooks';
import { useReader } from '../reader.ts';
import { curvesCsv } from './csv.ts';
import { fileName, save } from './download.ts';
import type { Panel, PanelMark } from './panel.ts';
import type { Range } from './range.ts';
import type { KnownCurves } from './use-curves.ts';
import { csvHeads, markWords } from './writing.ts';
import type { ZoneClock } from './zone-clock.ts';

interface ChartFilesProps {
  title: string;
  known: KnownCurves;
  panels: readonly Panel[];
  marks: readonly PanelMark[];
  range: Range;
  clock: ZoneClock;
}

/** What is shown, to be kept: a table and a picture. */
export function ChartFiles({ title, known, panels, marks, range, clock }: ChartFilesProps) {
  const reader = useReader();
  const { files } = reader.words.chart;
  const desk = useRef<HTMLDivElement>(null);
  const [isDrawing, setDrawing] = useState(false);
  const saveTable = () => {
    const told = marks.map(({ at, mark }) => ({ at, words: markWords(mark, reader) }));
    const text = curvesCsv(known.curves, known.changes, told, range, csvHeads(reader));
    // Spreadsheets take a file for UTF-8 by this mark alone.
    save(
      new Blob(['\ufeff', text], { type: 'text/csv;charset=utf-8' }),
      fileName(title, range, 'csv'),
    );
  };
  const savePicture = async () => {
    if (desk.current === null || isDrawing) return;
    setDrawing(true);
    try {
      // Few want a picture: it is no part of what a slow tablet fetches to see the curves.
      const { drawPicture } = await import('./picture.ts');
      const parts = { title, panels, marks, range, reader, clock };
      const picture = await drawPicture(desk.current, parts);
      if (picture !== null) save(picture, fileName(title, range, 'png'));
    } finally {
      setDrawing(false);
    }
  };
  return (
    <div class="chart-files">
      <p class="action-row">
        <button type="button" class="button-quiet" onClick={saveTable}>
          {files.csv}
        </button>
        <button
          type="button"
          class="button-quiet"
          aria-disabled={isDrawing}
          onClick={() => void savePicture()}
        >
          {files.png}
        </button>
      </p>
      <p class="footnote">{files.note}</p>
      <div class="picture-desk" ref={desk} aria-hidden="true" />
    </div>
  );
}
