import { cursorAfterKey, panned, type Range, rangeAfterKey, within, zoomed } from './range.ts';

export interface GestureState {
  readonly range: Range;
  readonly whole: Range;
  /** Where the keys led the cursor, epoch s; null while they did not. */
  readonly cursorAt: number | null;
  /** The newest reading, epoch s. */
  readonly newestAt: number;
}

const WHEEL_STEP = 0.0016;
/** A finger or mouse that moved less did not mean to drag, CSS pixels. */
const LEAST_DRAG = 4;

/**
 * Looks closer and moves along by wheel, mouse, fingers and keys.
 *
 * A wheel alone scrolls the page, unless the chart was clicked into; with Ctrl held, which is also what
 * two fingers on a touch pad send, it always looks closer.
 *
 * @param target - what the panels stand in; takes the keys
 * @param now - what is seen, asked at each gesture
 * @param onCursor - told where the keys lead the cursor; null takes it away
 * @returns ends it
 */
export function watchGestures(
  target: HTMLElement,
  now: () => GestureState,
  onRange: (range: Range) => void,
  onCursor: (at: number | null) => void,
): () => void {
  const pointers = new Map<number, number>();
  let held: { range: Range; x: number; moved: boolean } | null = null;
  let pinch: { range: Range; apart: number; focus: number } | null = null;

  const plotBox = () => {
    const over = target.querySelector('.u-over') ?? target;
    const { left, width } = over.getBoundingClientRect();
    return { left, width: Math.max(1, width) };
  };
  const momentAt = (x: number, range: Range) => {
    const { left, width } = plotBox();
    return range.from + ((x - left) / width) * (range.to - range.from);
  };

  function wheel(event: WheelEvent): void {
    const isOurs = event.ctrlKey || event.metaKey || document.activeElement === target;
    if (!isOurs) return;
    event.preventDefault();
    const { range, whole } = now();
    const turned = event.deltaMode === 0 ? 1 : 32;
    if (Math.abs(event.deltaX) > Math.abs(event.deltaY) || event.shiftKey) {
      const by = event.deltaX === 0 ? event.deltaY : event.deltaX;
      onRange(panned(range, whole, (by * turned) / plotBox().width));
      return;
    }
    const factor = Math.exp(event.deltaY * turned * WHEEL_STEP * (event.ctrlKey ? 3 : 1));
    onRange(zoomed(range, whole, factor, momentAt(event.clientX, range)));
  }

  function down(event: PointerEvent): void {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    if (!(event.target as HTMLElement).closest('.u-over')) return;
    pointers.set(event.pointerId, event.clientX);
    const { range } = now();
    if (pointers.size === 1) held = { range, x: event.clientX, moved: false };
    if (pointers.size === 2) {
      const [a = 0, b = 0] = [...pointers.values()];
      held = null;
      pinch = {
        range,
        apart: Math.max(8, Math.abs(a - b)),
        focus: momentAt((a + b) / 2, range),
      };
    }
  }

  function move(event: PointerEvent): void {
    if (!pointers.has(event.pointerId)) return;
    pointers.set(event.pointerId, event.clientX);
    const { whole } = now();
    if (pinch !== null && pointers.size === 2) {
      const [a = 0, b = 0] = [...pointers.values()];
      const factor = pinch.apart / Math.max(8, Math.abs(a - b));
      const { left, width } = plotBox();
      const closer = zoomed(pinch.range, whole, factor, pinch.focus);
      // The moment between the fingers stays between them.
      const length = closer.to - closer.from;
      const from = pinch.focus - (((a + b) / 2 - left) / width) * length;
      onRange(within({ from, to: from + length }, whole));
      return;
    }
    if (held === null) return;
    const by = event.clientX - held.x;
    if (!held.moved && Math.abs(by) < LEAST_DRAG) return;
    if (!held.moved) target.setPointerCapture?.(event.pointerId);
    held.moved = true;
    onRange(panned(held.range, whole, -by / plotBox().width));
  }

  function up(event: PointerEvent): void {
    pointers.delete(event.pointerId);
    held = null;
    pinch = null;
  }

  function key(event: KeyboardEvent): void {
    if (event.target !== target || event.ctrlKey || event.metaKey || event.altKey) return;
    const { range, whole, cursorAt, newestAt } = now();
    if (event.key === 'Escape' && cursorAt !== null) {
      event.preventDefault();
      onCursor(null);
      return;
    }
    const led = event.shiftKey ? cursorAfterKey(event.key, cursorAt, newestAt, range) : null;
    if (led !== null) {
      event.preventDefault();
      onCursor(led);
      return;
    }
    const next = rangeAfterKey(event.key, range, whole);
    if (next === null) return;
    event.preventDefault();
    onRange(next);
  }

  const twice = () => onRange(now().whole);
  target.addEventListener('wheel', wheel, { passive: false });
  target.addEventListener('pointerdown', down);
  target.addEventListener('pointermove', move);
  target.addEventListener('pointerup', up);
  target.addEventListener('pointercancel', up);
  target.addEventListener('dblclick', twice);
  target.addEventListener('keydown', key);
  return () => {
    target.removeEventListener('wheel', wheel);
    target.removeEventListener('pointerdown', down);
    target.removeEventListener('pointermove', move);
    target.removeEventListener('pointerup', up);
    target.removeEventListener('pointercancel', up);
    target.removeEventListener('dblclick', twice);
    target.removeEventListener('keydown', key);
  };
}
