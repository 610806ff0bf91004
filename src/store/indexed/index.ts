/**
 * indexed: the store in a browser, on IndexedDB.
 *
 * The third store behind the port, under the same tests as the others. Depends on what the store's
 * folder has that knows no Node. Stays away from Node, from the network and from the pages: what a
 * browser's worker opens is what the tests open.
 */
export { type IndexedHost, openIndexedStore } from './indexed-store.ts';
