import { focusHeading } from './focus.ts';

/** Where something that had the focus stood, from itself outwards. */
interface Stood {
  readonly parent: Element;
  readonly next: Element | null;
  readonly before: Element | null;
}

const POINTS = ['pointerdown', 'pointerup', 'pointercancel'] as const;
const FOCUSABLE =
  'a[href], button:not(:disabled), input:not(:disabled):not([type="hidden"]), select:not(:disabled), textarea:not(:disabled), summary, [tabindex="0"]';

/**
 * Keeps the focus near its place when what had it goes: a row that was removed, a form that closes
 * after sending. A browser would begin at the top of the page again, and say nothing.
 *
 * It goes to what opened the thing that went, else to what comes next in the same list or part, else to
 * what came before, else to the heading. A page that goes as a whole is left to {@link focusHeading}.
 *
 * @returns ends it
 */
export function keepFocus(page: Document): () => void {
  let last: HTMLElement | null = null;
  let stood: readonly Stood[] = [];
  let opener: HTMLElement | null = null;
  let isPointing = false;
  let isDown = false;

  const took = (event: FocusEvent) => {
    if (!(event.target instanceof HTMLElement)) return;
    last = event.target;
    stood = placesOf(last);
  };
  const left = (event: FocusEvent) => {
    // Given away on purpose: somebody tapped beside it. What is removed tells that it lost it, too.
    if (isDown && event.relatedTarget === null) last = null;
  };
  const pointed = ({ type }: Event) => {
    isPointing = true;
    isDown = type === 'pointerdown';
  };
  const opened = ({ target }: Event) => {
    const button = target instanceof Element ? target.closest('[aria-expanded]') : null;
    if (button instanceof HTMLElement) opener = button;
  };
  const typed = () => {
    isPointing = false;
  };

  const watching = new MutationObserver(() => {
    if (last === null || !page.hasFocus()) return;
    const { activeElement } = page;
    if (activeElement !== null && activeElement !== page.body) return;
    if (last.isConnected && last.getClientRects().length > 0) return;
    last = null;
    rescue();
  });

  function rescue(): void {
    const found = nearest();
    if (found === null) focusHeading(page);
    else found.focus({ preventScroll: isPointing });
  }

  function nearest(): HTMLElement | null {
    for (const { parent, next, before } of stood) {
      if (!parent.isConnected || parent.closest('main') === null) continue;
      if (opener?.isConnected && parent.contains(opener) && parent.tagName !== 'MAIN') {
        return opener;
      }
      const near = firstIn(next) ?? lastIn(before);
      if (near !== null) return near;
      const heading = parent.querySelector<HTMLElement>('h1, h2, h3, h4');
      if (heading === null) continue;
      heading.tabIndex = -1;
      return heading;
    }
    return null;
  }

  /** Through it and what follows; a field would open the keyboard of a phone nobody asked for. */
  function firstIn(start: Element | null): HTMLElement | null {
    for (let at = start; at !== null; at = at.nextElementSibling) {
      const found = within(at)[0];
      if (found !== undefined) return found;
    }
    return null;
  }

  function lastIn(start: Element | null): HTMLElement | null {
    for (let at = start; at !== null; at = at.previousElementSibling) {
      const found = within(at).at(-1);
      if (found !== undefined) return found;
    }
    return null;
  }

  function within(element: Element): HTMLElement[] {
    if (!element.isConnected) return [];
    const all = [element, ...element.querySelectorAll(FOCUSABLE)];
    return all.filter(
      (one): one is HTMLElement =>
        one instanceof HTMLElement &&
        one.matches(FOCUSABLE) &&
        one.getClientRects().length > 0 &&
        !(isPointing && one.matches('input, select, textarea')),
    );
  }

  page.addEventListener('focusin', took);
  page.addEventListener('focusout', left);
  for (const type of POINTS) page.addEventListener(type, pointed, true);
  page.addEventListener('keydown', typed, true);
  page.addEventListener('click', opened, true);
  watching.observe(page.body, { childList: true, subtree: true, attributeFilter: ['hidden'] });
  return () => {
    page.removeEventListener('focusin', took);
    page.removeEventListener('focusout', left);
    for (const type of POINTS) page.removeEventListener(type, pointed, true);
    page.removeEventListener('keydown', typed, true);
    page.removeEventListener('click', opened, true);
    watching.disconnect();
  };
}

function placesOf(element: Element): Stood[] {
  const places: Stood[] = [];
  for (let at: Element = element; at.parentElement !== null; at = at.parentElement) {
    const { parentElement: parent, nextElementSibling: next, previousElementSibling: before } = at;
    places.push({ parent, next, before });
    if (parent.tagName === 'MAIN') break;
  }
  return places;
}
