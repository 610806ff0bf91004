import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureDebian } from '../../scripts/ensure-debian.ts';
import { ROOT } from '../../scripts/root.ts';
import type { Refusal } from '../../src/study/index.ts';
import { readTrace, type SystemCall } from './system-calls.ts';

export interface TracedRun {
  readonly acknowledged: readonly string[];
  readonly refused: readonly Refusal[];
  readonly calls: readonly SystemCall[];
}

/**
 * Runs store-child.ts under strace, which shows its system calls in the order in which they
 * return; `strace` are further arguments, e.g. to make some of them fail.
 */
export async function tracedStore(
  child: readonly [dir: string, how: string, most: string],
  strace: readonly string[],
): Promise<TracedRun> {
  const folder = await mkdtemp(join(tmpdir(), 'hoistside-trace-'));
  const file = join(folder, 'calls.txt');
  try {
    const run = [process.execPath, 'bin/run-ts.js', 'test/fault/store-child.ts', ...child];
    const args = ['-f', '-y', '-s', '200', '-o', file, ...strace, ...run];
    const output = await outputOf(ensureDebian('strace', 'strace'), args);
    return { ...output, calls: readTrace(await readFile(file, 'utf8')) };
  } finally {
    await rm(folder, { recursive: true });
  }
}

async function outputOf(command: string, args: readonly string[]) {
  const child = spawn(command, args, { cwd: ROOT, stdio: ['ignore', 'pipe', 'inherit'] });
  let text = '';
  child.stdout.on('data', (chunk) => {
    text += chunk;
  });
  await once(child, 'close');
  const after = (word: string) =>
    text.split('\n').flatMap((line) => (line.startsWith(word) ? [line.slice(word.length)] : []));
  return {
    acknowledged: after('ack '),
    refused: after('refused ').map((line): Refusal => JSON.parse(line)),
  };
}
