import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { ROOT } from '../../scripts/root.ts';

/** A copy of the project's own files in a folder of its own, with the same installed packages. */
export class ProjectCopy {
  readonly dir = mkdtempSync(join(tmpdir(), 'hoistside-copy-'));

  constructor() {
    const listed = execFileSync(
      'git',
      ['ls-files', '-z', '--cached', '--others', '--exclude-standard'],
      {
        cwd: ROOT,
        encoding: 'utf8',
      },
    );
    for (const file of listed.split('\0').filter((f) => f !== '')) this.#copy(file);
    symlinkSync(join(ROOT, 'node_modules'), join(this.dir, 'node_modules'));
  }

  #copy(file: string): void {
    mkdirSync(dirname(join(this.dir, file)), { recursive: true });
    try {
      copyFileSync(join(ROOT, file), join(this.dir, file));
    } catch (error) {
      // A file deleted but not yet committed is still listed.
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    }
  }

  /** Runs a program in the copy and returns what it printed. */
  run(command: string, ...args: readonly string[]): string {
    return execFileSync(command, args, {
      cwd: this.dir,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'inherit'],
    });
  }

  hoistside(...args: readonly string[]): string {
    return this.run(process.execPath, 'bin/hoistside.js', ...args);
  }

  /** Starts the copy's server; `stop` ends it. */
  async serve(library: string): Promise<{ address: URL; stop: () => Promise<void> }> {
    const child = spawn(
      process.execPath,
      ['bin/hoistside.js', '--library', library, 'serve', '--port', '0'],
      {
        cwd: this.dir,
        stdio: ['ignore', 'pipe', 'inherit'],
      },
    );
    const [line] = (await once(createInterface({ input: child.stdout }), 'line')) as [string];
    const stop = async () => {
      child.kill('SIGTERM');
      await once(child, 'exit');
    };
    return { address: new URL(line.replace('Open ', '')), stop };
  }

  remove(): void {
    rmSync(this.dir, { recursive: true });
  }
}
