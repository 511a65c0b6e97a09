/**
 * Closes something with the Escape key, and gives the focus back to what opened it.
 *
 * @param close - closes it
 * @param openerId - id of the button that opened it
 */
export function closesOnEscape(close: () => void, openerId: string) {
  return (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    event.preventDefault();
    close();
    document.getElementById(openerId)?.focus();
  };
}
