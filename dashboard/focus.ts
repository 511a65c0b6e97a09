/**
 * Gives the focus to the heading of a page that has come up, so that whoever hears the page, or moves by
 * keys, begins there; waits for it where the page’s script is still on its way.
 *
 * @returns how to stop waiting
 */
export function focusHeading(within: ParentNode = document): () => void {
  if (moveTo(within)) return () => {};
  const watching = new MutationObserver(() => {
    if (moveTo(within)) watching.disconnect();
  });
  watching.observe(document.body, { childList: true, subtree: true });
  return () => watching.disconnect();
}

function moveTo(within: ParentNode): boolean {
  const heading = within.querySelector<HTMLElement>('main h1');
  if (heading === null) return false;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
  return true;
}
