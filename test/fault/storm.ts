import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { build } from 'vite';
import { ROOT } from '../../scripts/root.ts';
import type { StormAct, StormOrder, Told } from './storm-order.ts';

const OUT = 'out/fault';

/** Puts the child and all it imports into one file: it starts in a fifth of the time. */
export async function builtChild(): Promise<string> {
  await build({
    ...{ root: ROOT, configFile: false, logLevel: 'error' },
    build: { ssr: 'test/fault/storm-child.ts', outDir: OUT, target: 'node20', minify: false },
    ssr: { noExternal: true, external: ['libsql'] },
  });
  return join(ROOT, OUT, 'storm-child.js');
}

/** A child that is up and waits for its order, so that the next round need not wait for it. */
export class StormChild {
  readonly #child: ChildProcess;
  readonly told: Told[] = [];
  readonly #closed: Promise<unknown>;
  #complaint = '';

  constructor(script: string) {
    const child = spawn(process.execPath, [script], { cwd: ROOT, stdio: 'pipe' });
    const lines = createInterface({ input: child.stdout });
    lines.on('line', (line) => {
      const [what, value] = line.split(' ');
      this.told.push({ what, value } as Told);
    });
    child.stderr.on('data', (text) => {
      this.#complaint += text;
    });
    this.#child = child;
    this.#closed = Promise.all([once(child, 'exit'), once(lines, 'close')]);
  }

  /** Gives the order, and kills it `waitMs` after the first of these things is said to be done. */
  async killedAfter(
    order: StormOrder,
    first: readonly StormAct[],
    waitMs: number,
  ): Promise<readonly Told[]> {
    this.#child.stdin?.write(`${JSON.stringify(order)}\n`);
    const isDone = () => first.length === 0 || this.told.some(({ what }) => first.includes(what));
    while (!isDone() && this.#child.exitCode === null) await pause(1);
    await pause(waitMs);
    this.kill();
    await this.#closed;
    if (this.#child.signalCode !== 'SIGKILL') throw new Error(`it ended: ${this.#complaint}`);
    return this.told;
  }

  kill(): void {
    this.#child.kill('SIGKILL');
  }
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
