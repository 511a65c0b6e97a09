import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { ReaderContext } from './reader.ts';
import { useShed } from './shed-context.ts';

/** Hands the reader of this device to every page, and says in which language they are written. */
export function ReaderProvider({ children }: { children: ComponentChildren }) {
  const { readerChoice } = useShed();
  const reader = readerChoice.reader.value;
  const locale = reader?.locale;
  useEffect(() => {
    if (locale !== undefined) document.documentElement.lang = locale;
  }, [locale]);
  if (reader === null) return null;
  return <ReaderContext.Provider value={reader}>{children}</ReaderContext.Provider>;
}
