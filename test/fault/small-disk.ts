import { spawnSync } from 'node:child_process';
import { mkdtemp, rmdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A disk in memory that is soon full, for the time of a test. */
export class SmallDisk {
  readonly #views: string[] = [];

  private constructor(readonly path: string) {}

  /** @throws Error that says what to do where disks can't be mounted. */
  static async mount(kilobytes: number): Promise<SmallDisk> {
    const path = await mkdtemp(join(tmpdir(), 'hoistside-disk-'));
    run('mount', '-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', path);
    return new SmallDisk(path);
  }

  /** The same disk at another path, where nothing can be written. */
  async readOnly(): Promise<string> {
    const view = await mkdtemp(join(tmpdir(), 'hoistside-read-only-'));
    this.#views.push(view);
    run('mount', '--bind', this.path, view);
    run('mount', '-o', 'remount,bind,ro', view);
    return view;
  }

  resize(kilobytes: number): void {
    run('mount', '-o', `remount,size=${kilobytes}k`, this.path);
  }

  async unmount(): Promise<void> {
    // Lazily: the database's driver lets go of a closed file only when its memory is collected.
    for (const path of [...this.#views, this.path]) {
      run('umount', '--lazy', path);
      await rmdir(path);
    }
  }
}

function run(command: string, ...args: readonly string[]): void {
  const { status, stderr, error } = spawnSync(command, args, { encoding: 'utf8' });
  if (status === 0) return;
  throw new Error(
    `${command} ${args.join(' ')} failed: ${error?.message ?? stderr.trim()}. These tests mount small disks: run them as root, in a container with the right to mount (--cap-add SYS_ADMIN).`,
  );
}
