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
  worker: { format: 'es' },
  server: { proxy: { '/api': SERVER } },
});
