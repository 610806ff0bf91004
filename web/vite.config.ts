import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { offlinePlugin } from './offline-plugin.ts';

/** Where `vite web` finds the server while pages are worked on. */
const SERVER = 'http://127.0.0.1:4270';
const SERVICE_WORKER = 'service-worker';
const here = (path: string): string => new URL(path, import.meta.url).pathname;

/**
 * Builds the pages, their worker and the service worker into web/dist. Nothing is written into the
 * page itself (no inline assets), so that a strict content policy holds.
 */
export default defineConfig({
  plugins: [react(), offlinePlugin()],
  build: {
    outDir: 'dist',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 700,
    rolldownOptions: {
      input: { index: here('index.html'), [SERVICE_WORKER]: here('src/offline/service-worker.ts') },
      output: {
        // At the root, so that it may answer for every page, and under the same name each time.
        entryFileNames: ({ name }) =>
          name === SERVICE_WORKER ? `${name}.js` : 'assets/[name]-[hash].js',
      },
    },
  },
  // One file, so that a server that goes away can't leave the worker without a question.
  worker: { format: 'es', rolldownOptions: { output: { codeSplitting: false } } },
  server: { proxy: { '/api': SERVER } },
});
