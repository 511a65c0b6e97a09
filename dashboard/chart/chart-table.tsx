import { useState } from 'preact/hooks';
import { laterPart } from '../later.tsx';
import { useReader } from '../reader.ts';
import type { FigureTablesProps } from './figure-tables.tsx';

// Few open it: its rows are no part of what a slow tablet fetches to see the curves.
const FigureTables = laterPart(async () => (await import('./figure-tables.tsx')).FigureTables);

/** What is drawn as two tables: the figures, and what happened. */
export function ChartTable(props: FigureTablesProps) {
  const { table } = useReader().words.chart;
  const [isOpen, setOpen] = useState(false);
  return (
    <details
      class="more chart-table"
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>{table.open}</summary>
      {isOpen && <FigureTables {...props} />}
    </details>
  );
}
