import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Where a program stands on this machine's PATH; undefined when it is not there. */
export function findBinary(name: string): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return folders.map((folder) => join(folder, name)).find(isExecutable);
}

/**
 * Path of `binary`. Where it is missing it is installed from Debian's package `pkg`, when we are
 * root on a Debian system.
 * @throws Error with one line that says what to install, where it can't be done here.
 */
export function ensureDebian(binary: string, pkg: string): string {
  const there = findBinary(binary);
  if (there !== undefined) return there;
  if (!canInstall())
    throw new Error(
      `${binary} is missing: install the package ${pkg} (Debian: sudo apt-get install ${pkg}) and run the command again.`,
    );
  install(pkg);
  const now = findBinary(binary);
  if (now === undefined)
    throw new Error(
      `${pkg} is installed, but ${binary} is not on the PATH: look at the output above.`,
    );
  return now;
}

const canInstall = (): boolean =>
  process.getuid?.() === 0 &&
  existsSync('/etc/debian_version') &&
  findBinary('apt-get') !== undefined;

function install(pkg: string): void {
  console.log(`Installing ${pkg} from Debian's packages.`);
  apt('update');
  apt('install', '--yes', '--no-install-recommends', pkg);
}

function apt(...args: readonly string[]): void {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const { status } = spawnSync('apt-get', args, { stdio: 'inherit', env });
  if (status !== 0)
    throw new Error(
      `apt-get ${args.join(' ')} failed: see its output above, mend it and run the command again.`,
    );
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
