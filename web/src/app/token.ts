const KEY = 'hoistside.token';

/** A new token in the address of an open page: the server was started anew. */
export const watchToken = (): void =>
  window.addEventListener('hashchange', () => {
    const before = sessionStorage.getItem(KEY);
    if (takeToken() !== before) location.reload();
  });

/**
 * The token of the printed address: taken once from `#token=…`, kept for this tab, and taken
 * out of the address so that it is not shared or bookmarked by accident.
 */
export function takeToken(): string {
  const found = /^#token=([\w.~-]+)$/.exec(location.hash)?.[1];
  if (found) {
    sessionStorage.setItem(KEY, found);
    history.replaceState(null, '', location.pathname + location.search);
  }
  return sessionStorage.getItem(KEY) ?? '';
}
