import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

const LEAST_PX = 280;
/** As wide as a page gets, less its margins. */
const MOST_PX = 1168;
const MARGIN_PX = 40;
const USUAL_TEXT_PX = 16;

/**
 * How wide a strip is, px at the usual size of text: what words may lie beside each other hangs on it.
 *
 * @param strip - where it is drawn; without it one across the whole page is reckoned with
 */
export function useStripWidth(strip?: RefObject<HTMLElement | null>): number {
  const measure = () => {
    const across = Math.min(MOST_PX, Math.max(LEAST_PX, innerWidth - MARGIN_PX));
    const px = strip?.current?.clientWidth || across;
    // Text twice as large leaves room for half as much of it.
    const textPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    return (px * USUAL_TEXT_PX) / (textPx || USUAL_TEXT_PX);
  };
  const [width, setWidth] = useState(measure);
  useLayoutEffect(() => {
    const turn = () => setWidth(measure());
    turn();
    addEventListener('resize', turn);
    // The strip may be given its room only after it was drawn.
    const drawn = strip?.current ?? null;
    const watching = drawn === null ? null : new ResizeObserver(turn);
    if (drawn !== null) watching?.observe(drawn);
    return () => {
      removeEventListener('resize', turn);
      watching?.disconnect();
    };
  }, []);
  return width;
}
