import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Where `vite web` finds the server while pages are worked on. */
const SERVER = 'http://127.0.0.1:4270';

/**
 * Builds the pages and their worker into web/dist. Nothing is written into the page itself
 * (no inline assets), so that a strict content policy holds.
 */
export default defineConfig({
  plugins: [react()],
  build: { outDir: 'dist', assetsInlineLimit: 0, chunkSizeWarningLimit: 700 },
  // One file, so that a server that goes away can't leave the worker without a question.
  worker: { format: 'es', rolldownOptions: { output: { codeSplitting: false } } },
  server: { proxy: { '/api': SERVER } },
});
