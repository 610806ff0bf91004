import type { Id } from '../../../src/study/index.ts';

/** Pages of one browser open at once, at most. */
const MOST = 50;

/**
 * The name under which this page counts its changes: the browser's, or with a number behind it
 * where another page of it is open. A lock holds the name until the page is closed, so that no
 * two pages count under one name.
 */
export async function deviceName(base: Id): Promise<Id> {
  for (let i = 1; i <= MOST; i++) {
    const name = i === 1 ? base : `${base}-${i}`;
    if (await hold(`hoistside device ${name}`)) return name;
  }
  throw new Error(`more than ${MOST} pages are open: close some of them`);
}

function hold(lock: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const forever = new Promise<void>(() => undefined);
    navigator.locks
      .request(lock, { ifAvailable: true }, (held) => {
        resolve(held !== null);
        return held === null ? undefined : forever;
      })
      .catch(reject);
  });
}
