import type { ComponentChildren } from 'preact';
import { useReader } from '../reader.ts';

interface SheetProps {
  title: string;
  /** What is to be minded when it is printed. */
  how: string;
  children: ComponentChildren;
}

/** The sheet, and above it what is not printed. */
export function Sheet({ title, how, children }: SheetProps) {
  const { words, units } = useReader();
  return (
    <main class={`page print paper-${units}`}>
      <header class="print-head">
        <h1>{title}</h1>
        <p>{how}</p>
        <button type="button" class="button button-main" onClick={() => print()}>
          {words.print.print}
        </button>
      </header>
      {children}
    </main>
  );
}
