/**
 * Keeps the screen awake where the browser allows it, also after it was looked away from; where it does not, nothing
 * happens. Returns what lets the screen sleep again.
 */
export function keepAwake(): () => void {
  const locks: Promise<WakeLockSentinel | undefined>[] = [];
  const take = (): void => {
    if (document.visibilityState === 'visible' && 'wakeLock' in navigator)
      locks.push(navigator.wakeLock.request('screen').catch(() => undefined));
  };
  document.addEventListener('visibilitychange', take);
  take();
  return () => {
    document.removeEventListener('visibilitychange', take);
    for (const lock of locks) void lock.then((taken) => taken?.release());
  };
}
