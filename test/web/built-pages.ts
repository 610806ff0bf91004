import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { ROOT } from '../../scripts/root.ts';

const DIST = join(ROOT, 'web/dist');

/** Builds the pages where a source is newer than what was built last; returns their folder. */
export async function builtPages(): Promise<string> {
  const page = join(DIST, 'index.html');
  const built = existsSync(page) ? statSync(page).mtimeMs : 0;
  if (newest(join(ROOT, 'web'), ['dist']) > built || newest(join(ROOT, 'src'), []) > built)
    await asForUsers(() => build({ root: join(ROOT, 'web'), logLevel: 'error' }));
  return DIST;
}

/** The test runner's own environment would have other pages built than people get. */
async function asForUsers(work: () => Promise<unknown>): Promise<void> {
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  try {
    await work();
  } finally {
    process.env.NODE_ENV = NODE_ENV;
  }
}

/** Time of the youngest file in a folder, in milliseconds. */
function newest(folder: string, without: readonly string[]): number {
  const times = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => !without.includes(entry.name))
    .map((entry) => {
      const path = join(folder, entry.name);
      return entry.isDirectory() ? newest(path, without) : statSync(path).mtimeMs;
    });
  return Math.max(0, ...times);
}
