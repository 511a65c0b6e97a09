import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { textScale } from './wall-layout.ts';

/** What there is for the boards and how large text is, px. */
export interface Room {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly shorterSidePx: number;
  /** Of the page’s root: what one `rem` is. */
  readonly remPx: number;
  /** Whether the window is of a size that hangs on a wall; a smaller one is held in a hand and scrolled. */
  readonly isWall: boolean;
  /** False until head and foot are drawn: till then it is about right. */
  readonly isMeasured: boolean;
}

/** Smaller windows are scrolled; `wall.css` names the same sizes. */
const LEAST_WIDTH = 600;
const LEAST_HEIGHT = 500;
/** About what head and foot take before they are measured, rem. */
const AROUND = 7;

/**
 * How much room there is for the boards: what head, banner and foot leave of the window.
 *
 * @param wall - holds the boards and then the foot, and ends where the window ends
 */
export function useRoom(wall: { readonly current: HTMLElement | null }): Room {
  const [room, setRoom] = useState(() => measured(null));
  const known = useRef(room);
  useLayoutEffect(() => {
    const measure = () => {
      scaleText();
      const now = measured(wall.current);
      if (JSON.stringify(now) === JSON.stringify(known.current)) return;
      known.current = now;
      setRoom(now);
    };
    const watching = new ResizeObserver(measure);
    for (const element of [wall.current, wall.current?.lastElementChild]) {
      if (element) watching.observe(element);
    }
    addEventListener('resize', measure);
    measure();
    return () => {
      watching.disconnect();
      removeEventListener('resize', measure);
      document.documentElement.style.removeProperty('--wall-scale');
    };
  }, [wall]);
  return room;
}

/** On a television everything is larger than on a tablet, in steps of a twentieth. */
function scaleText(): void {
  const scale = Math.floor(textScale(Math.min(innerWidth, innerHeight)) * 20) / 20;
  document.documentElement.style.setProperty('--wall-scale', `${scale * 100}%`);
}

function measured(wall: HTMLElement | null): Room {
  const remPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  const foot = wall?.lastElementChild?.getBoundingClientRect().height ?? 0;
  return {
    widthPx: wall?.clientWidth ?? innerWidth,
    heightPx: Math.floor(wall === null ? innerHeight - AROUND * remPx : wall.clientHeight - foot),
    shorterSidePx: Math.min(innerWidth, innerHeight),
    remPx,
    isWall: innerWidth >= LEAST_WIDTH && innerHeight >= LEAST_HEIGHT,
    isMeasured: wall !== null,
  };
}
