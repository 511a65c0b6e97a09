/**
 * Lets the app be opened without a network, where the browser allows it: over HTTPS or on the computer
 * itself. Without it all else works, as long as the page can be loaded.
 */
export function registerWorker(): void {
  if (!('serviceWorker' in navigator)) return;
  // What it keeps is fetched after what the page itself needs, which may be here before this script.
  if (document.readyState === 'complete') register();
  else addEventListener('load', register);
}

function register(): void {
  navigator.serviceWorker
    .register('./sw.js', { scope: './', updateViaCache: 'none' })
    // A certificate that the device does not trust, or a browser that keeps nothing.
    .catch(() => {});
}
