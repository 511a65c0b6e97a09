import type { ComponentChildren } from 'preact';

interface SheetProps {
  title: string;
  /** What is to be minded when it is printed. */
  how: string;
  children: ComponentChildren;
}

/** The sheet, and above it what is not printed. */
export function Sheet({ title, how, children }: SheetProps) {
  return (
    <main class="page print">
      <header class="print-head">
        <h1>{title}</h1>
        <p>{how}</p>
        <button type="button" class="button button-main" onClick={() => print()}>
          Print
        </button>
      </header>
      {children}
    </main>
  );
}
