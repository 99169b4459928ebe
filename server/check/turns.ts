import { setImmediate } from 'node:timers/promises';

/**
 * Lets whoever asks go on one by one, each in another turn of the event loop: what comes in meanwhile is then answered between
 * them, and not after all of them.
 */
export function createTurns(): () => Promise<void> {
  let last: Promise<void> = Promise.resolve();
  return () => {
    last = last.then(() => setImmediate());
    return last;
  };
}
