import { useEffect, useState } from 'preact/hooks';

/**
 * Whether so long has gone by since the view came up.
 *
 * @param afterMs - ms
 */
export function useLater(afterMs: number): boolean {
  const [isLater, setLater] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLater(true), afterMs);
    return () => clearTimeout(timer);
  }, [afterMs]);
  return isLater;
}
