import type { ReadonlySignal } from '@preact/signals';
import { useEffect, useRef, useState } from 'preact/hooks';
import { isTurnDue, turned } from './wall-pages.ts';

interface TurningWall {
  /** How many pages there are. */
  readonly pages: number;
  /** Seconds for which a page stands; 0 until it is turned by hand. */
  readonly seconds: number;
  /** This device’s clock, epoch ms, every second. */
  readonly clock: ReadonlySignal<number>;
}

export interface Turned {
  readonly page: number;
  /** Whether it turns by itself when nobody is there. */
  readonly turnsItself: boolean;
  turn(step: number): void;
  show(page: number): void;
  setTurnsItself(turnsItself: boolean): void;
}

/** What tells that someone is there. */
const handEvents = ['pointerdown', 'pointermove', 'wheel', 'keydown', 'touchstart'] as const;

/** The page of the wall that is shown; turns by itself while nobody touches, points or types. */
export function useTurning({ pages, seconds, clock }: TurningWall): Turned {
  const [page, setPage] = useState(0);
  const [told, setTold] = useState<boolean | null>(null);
  const turnsItself = told ?? (seconds > 0 && !wantsNoMotion());
  const turnedAt = useRef(clock.peek());
  const handAt = useRef<number | null>(null);
  const show = (next: number) => {
    turnedAt.current = clock.peek();
    setPage(next);
  };
  const turn = (step: number) => {
    turnedAt.current = clock.peek();
    setPage((before) => turned(Math.min(before, pages - 1), step, pages));
  };

  useEffect(() => {
    const note = () => {
      handAt.current = clock.peek();
    };
    for (const event of handEvents) addEventListener(event, note, { passive: true });
    return () => {
      for (const event of handEvents) removeEventListener(event, note);
    };
  }, [clock]);

  useEffect(() => {
    if (pages < 2) return;
    const arrow = (event: KeyboardEvent) => {
      const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
      if (step === undefined || isTyping(event) || document.querySelector('dialog[open]')) return;
      turn(step);
    };
    addEventListener('keydown', arrow);
    return () => removeEventListener('keydown', arrow);
  }, [pages]);

  useEffect(() => {
    if (pages < 2 || !turnsItself) return;
    return clock.subscribe((now) => {
      const isDue = isTurnDue({
        now,
        turnedAt: turnedAt.current,
        handAt: handAt.current,
        isFocused: hasKeyboardFocus(),
        seconds: seconds === 0 ? USUAL_SECONDS : seconds,
      });
      if (isDue) turn(1);
    });
  }, [pages, turnsItself, seconds, clock]);

  return { page: Math.min(page, pages - 1), turnsItself, turn, show, setTurnsItself: setTold };
}

/** Of a wall that is told to turn by itself though its pages are set to stand. */
const USUAL_SECONDS = 15;

/** A finger leaves its focus behind on what it touched; that holds nothing up. */
function hasKeyboardFocus(): boolean {
  const focused = document.activeElement?.closest('.wall *') ?? null;
  try {
    return focused?.matches(':focus-visible') ?? false;
  } catch {
    // An old browser that does not know the selector.
    return focused !== null;
  }
}

function wantsNoMotion(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}

function isTyping(event: KeyboardEvent): boolean {
  const { target } = event;
  return (
    event.altKey ||
    event.ctrlKey ||
    event.metaKey ||
    (target instanceof Element && target.closest('input, select, textarea') !== null)
  );
}
