/**
 * Lets the app be opened without a network, where the browser allows it: over HTTPS or on the computer
 * itself. Without it all else works, as long as the page can be loaded.
 */
export function registerWorker(): void {
  if (!('serviceWorker' in navigator)) return;
  addEventListener('load', () => {
    navigator.serviceWorker
      .register('./sw.js', { scope: './', updateViaCache: 'none' })
      // A certificate that the device does not trust, or a browser that keeps nothing.
      .catch(() => {});
  });
}
