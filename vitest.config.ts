import { defineConfig } from 'vitest/config';

/** `unit` is what `npm run check` runs; `whole` starts servers, browsers and large imports. */
export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: ['test/web/**', 'test/fault/**', 'test/whole/**'],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'whole',
          include: ['test/{web,fault,whole}/**/*.test.ts'],
          testTimeout: 300_000,
          hookTimeout: 300_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
