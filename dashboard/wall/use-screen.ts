import type { ReadonlySignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { keepAwake } from '../screen/keep-awake.ts';
import { shiftAt } from '../screen/shift.ts';

/**
 * While the wall is shown: the screen stays on, and what is on it moves by a few pixels within hours.
 *
 * @param clock - this device’s, epoch ms
 */
export function useScreen(clock: ReadonlySignal<number>): void {
  useEffect(keepAwake, []);
  useEffect(() => {
    const { style } = document.documentElement;
    let shown = '';
    const stop = clock.subscribe((now) => {
      const { x, y } = shiftAt(now);
      const wanted = `${x} ${y}`;
      // What somebody has in hand stays where it is.
      const isInHand = document.activeElement?.closest('.app *') != null;
      if (wanted === shown || (isInHand && shown !== '')) return;
      shown = wanted;
      style.setProperty('--shift-x', `${x}px`);
      style.setProperty('--shift-y', `${y}px`);
    });
    return () => {
      stop();
      style.removeProperty('--shift-x');
      style.removeProperty('--shift-y');
    };
  }, [clock]);
}
