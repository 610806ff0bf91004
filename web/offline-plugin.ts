import type { Plugin } from 'vite';
import { digest } from '../src/study/index.ts';

/** What lies in public/ and belongs to the pages. */
const PUBLIC = ['/mark.svg', '/icon-192.png', '/icon-512.png', '/manifest.webmanifest'];
const ENTRY = 'service-worker.js';
/** Older fonts that no browser fetches which can keep pages. */
const NEVER_FETCHED = /\.woff$|\.map$/;

/** Tells the service worker which files were built. */
export const offlinePlugin = (): Plugin => ({
  name: 'offline',
  apply: 'build',
  enforce: 'post',
  generateBundle(_, bundle) {
    const entry = bundle[ENTRY];
    if (entry?.type !== 'chunk') throw new TypeError(`${ENTRY} was not built`);
    const built = Object.keys(bundle)
      .filter((name) => name !== ENTRY && !NEVER_FETCHED.test(name))
      .map((name) => `/${name}`);
    const files = [...new Set(['/index.html', ...built, ...PUBLIC])].sort();
    const page = bundle['index.html'];
    const html = page?.type === 'asset' ? String(page.source) : '';
    entry.code = entry.code
      .replaceAll('BUILT_FILES', JSON.stringify(files))
      .replaceAll('BUILT_VERSION', JSON.stringify(digest(files.join() + html)));
  },
});
