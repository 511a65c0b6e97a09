import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';

/**
 * Brings the focus to the first field at fault; what is wrong is read out with it.
 *
 * @param fault - another object at each refusal, also of the same fault; null without one
 * @returns whether a field shows the fault
 */
export function useFirstFault(form: RefObject<HTMLElement | null>, fault: object | null): boolean {
  const [isMarked, setMarked] = useState(false);
  // Before anything is drawn, so that a note says one thing from the start.
  useLayoutEffect(() => {
    const field =
      fault === null
        ? undefined
        : form.current?.querySelector<HTMLElement>('[aria-invalid="true"]');
    setMarked(field != null);
    // Closed in a fold it could not take the focus.
    for (
      let fold = field?.closest('details');
      fold;
      fold = fold.parentElement?.closest('details')
    ) {
      fold.open = true;
    }
    field?.focus();
  }, [form, fault]);
  return isMarked;
}
