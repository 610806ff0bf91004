/**
 * What `npm test` runs: the programs that tests need, then types, lint, registry, the built web
 * pages and all tests, a real browser included. Every step runs, whatever failed before it.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureDebian } from './ensure-debian.ts';
import { ROOT } from './root.ts';

/** Programs the tests call, with the Debian package of each. */
const NEEDED = [
  ['chromium', 'chromium'],
  ['pdftotext', 'poppler-utils'],
  ['pdfinfo', 'poppler-utils'],
  ['strace', 'strace'],
  ['openssl', 'openssl'],
  ['mount', 'mount'],
] as const;

const STEPS = ['types', 'lint', 'registry:check', 'build:web'] as const;

/** Runs a command with its output shown; true when it ended well. */
function run(command: string, ...args: readonly string[]): boolean {
  console.log(`\n> ${command} ${args.join(' ')}`);
  return spawnSync(command, args, { cwd: ROOT, stdio: 'inherit' }).status === 0;
}

/** Fields of Vitest's JSON report that are read here. */
interface Report {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
}

/** All tests of both projects; undefined when Vitest wrote no report. */
function runTests(): { readonly ended: boolean; readonly report: Report | undefined } {
  const folder = mkdtempSync(join(tmpdir(), 'hoistside-test-'));
  const file = join(folder, 'report.json');
  try {
    const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
    const ended = run('npx', 'vitest', 'run', ...reporters);
    return { ended, report: readReport(file) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function readReport(file: string): Report | undefined {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

function ensureNeeded(): boolean {
  try {
    for (const [binary, pkg] of NEEDED) ensureDebian(binary, pkg);
    return true;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return false;
  }
}

/** Says what failed; a test that was left out counts as a failure, since nobody saw it pass. */
function closeWith(
  failedSteps: readonly string[],
  { ended, report }: ReturnType<typeof runTests>,
): number {
  const { numPassedTests: passed = 0, numFailedTests: failed = 0 } = report ?? {};
  const leftOut = (report?.numPendingTests ?? 0) + (report?.numTodoTests ?? 0);
  const unsaid = !ended && failed + leftOut === 0;
  if (leftOut > 0) console.error(`${leftOut} tests were left out; each must run or go.`);
  if (unsaid) console.error('The tests ended badly: see their output above.');
  for (const step of failedSteps) console.error(`npm run ${step} failed: see its output above.`);
  const bad = failed + leftOut + failedSteps.length + (unsaid ? 1 : 0);
  console.log(`\n${passed + STEPS.length - failedSteps.length} passed, ${bad} failed`);
  return bad === 0 ? 0 : 1;
}

if (ensureNeeded()) {
  const failedSteps = STEPS.filter((step) => !run('npm', 'run', '--silent', step));
  process.exitCode = closeWith(failedSteps, runTests());
} else {
  process.exitCode = 1;
}
