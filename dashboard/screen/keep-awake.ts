/**
 * Keeps the screen on while it is looked at from afar. Browsers allow that over HTTPS or on the computer
 * itself; elsewhere the device’s own settings have to.
 *
 * @returns lets the screen go dark again
 */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | null = null;
  let isOver = false;

  async function ask(): Promise<void> {
    // A browser takes the lock back when the page is hidden.
    if (isOver || document.visibilityState !== 'visible') return;
    try {
      const asked = await navigator.wakeLock?.request('screen');
      if (isOver) await asked?.release();
      else lock = asked ?? null;
    } catch {
      // A nearly empty battery, or a browser that does not allow it.
    }
  }

  void ask();
  document.addEventListener('visibilitychange', ask);
  return () => {
    isOver = true;
    document.removeEventListener('visibilitychange', ask);
    lock?.release().catch(() => {});
  };
}
