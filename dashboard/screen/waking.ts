/**
 * Calls back when the device has woken, its network is back, or the page is shown again: what stands on it may
 * be hours old, and its timers have slept as well.
 *
 * @returns stops listening
 */
export function onWake(act: () => void): () => void {
  const shown = () => {
    if (document.visibilityState === 'visible') act();
  };
  const restored = (event: PageTransitionEvent) => {
    if (event.persisted) act();
  };
  document.addEventListener('visibilitychange', shown);
  addEventListener('online', act);
  addEventListener('pageshow', restored);
  return () => {
    document.removeEventListener('visibilitychange', shown);
    removeEventListener('online', act);
    removeEventListener('pageshow', restored);
  };
}
