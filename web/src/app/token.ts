const KEY = 'hoistside.token';

/**
 * Where the token is kept. A paired device keeps its own over a closed tab and a flat battery; the
 * desk's is made anew at each start of the server, and goes with its tab.
 */
const kept = (): Storage => (location.protocol === 'https:' ? localStorage : sessionStorage);

/** A new token in the address of an open page: the server was started anew. */
export const watchToken = (): void =>
  window.addEventListener('hashchange', () => {
    const before = kept().getItem(KEY);
    if (takeToken() !== before) location.reload();
  });

/**
 * The token of the printed address, or of pairing: taken once from `#token=…`, kept, and taken
 * out of the address so that it is not shared or bookmarked by accident.
 */
export function takeToken(): string {
  const found = /^#token=([\w.~-]+)$/.exec(location.hash)?.[1];
  if (found) {
    kept().setItem(KEY, found);
    history.replaceState(null, '', location.pathname + location.search);
  }
  return kept().getItem(KEY) ?? '';
}
