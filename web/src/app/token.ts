import { keepWord, readWord } from './durable.ts';

const KEY = 'hoistside.token';

/**
 * A paired device keeps its token over a closed tab and a flat battery; the desk's is made anew at
 * each start of the server, and goes with its tab.
 */
const isOfDevice = (): boolean => location.protocol === 'https:';

/** A new token in the address of an open page: the server was started anew, or the device paired again. */
export const watchToken = (before: string): void =>
  window.addEventListener('hashchange', async () => {
    if ((await takeToken()) !== before) location.reload();
  });

/**
 * The token of the printed address, or of pairing: taken once from `#token=…`, kept, and taken
 * out of the address so that it is not shared or bookmarked by accident.
 */
export async function takeToken(): Promise<string> {
  const found = /^#token=([\w.~-]+)$/.exec(location.hash)?.[1];
  if (found) {
    if (isOfDevice()) await keepWord(KEY, found);
    else sessionStorage.setItem(KEY, found);
    history.replaceState(null, '', location.pathname + location.search);
    return found;
  }
  const kept = isOfDevice() ? await readWord(KEY) : sessionStorage.getItem(KEY);
  return kept ?? '';
}
