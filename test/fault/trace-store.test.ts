import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openSqliteStore } from '../../src/store/index.ts';
import type { SystemCall } from './system-calls.ts';
import { type TracedRun, tracedStore } from './traced-store.ts';

const STUDY = 'study-1';
const CALLS = '--trace=pwrite64,write,fsync,fdatasync,rename,renameat,renameat2';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-traced-'));
});
afterEach(() => rm(dir, { recursive: true }));

/** Calls between one acknowledgement and the next, for each acknowledgement. */
function beforeEachAck({ calls, acknowledged }: TracedRun): SystemCall[][] {
  const groups: SystemCall[][] = [[]];
  for (const call of calls)
    if (call.name === 'write' && /^write\(1\S*, "ack /.test(call.text)) groups.push([]);
    else groups.at(-1)?.push(call);
  expect(groups).toHaveLength(acknowledged.length + 1);
  return groups.slice(0, -1);
}

const isSync = ({ name }: SystemCall): boolean => name === 'fsync' || name === 'fdatasync';
const last = (calls: readonly SystemCall[], test: (c: SystemCall) => boolean): number =>
  calls.findLastIndex(test);

describe('the order of system calls', () => {
  test('each change: written to the log, the log fsynced, then acknowledged', async () => {
    const run = await tracedStore([dir, 'append', '4'], [CALLS]);
    expect(run.acknowledged).toHaveLength(4);
    for (const calls of beforeEachAck(run)) {
      const onLog = (c: SystemCall) => c.text.includes('/library.db-wal>');
      const written = last(calls, (c) => c.name === 'pwrite64' && onLog(c));
      const synced = last(calls, (c) => isSync(c) && onLog(c) && c.text.endsWith('= 0'));
      expect(written).toBeGreaterThanOrEqual(0);
      expect(synced).toBeGreaterThan(written);
    }
  });

  test('each blob: written, fsynced, renamed, its folder fsynced, then acknowledged', async () => {
    const run = await tracedStore([dir, 'blob', '2'], [CALLS]);
    expect(run.acknowledged).toHaveLength(2);
    for (const [i, calls] of beforeEachAck(run).entries()) {
      const hash = run.acknowledged[i] ?? '';
      const incoming = (c: SystemCall) => c.text.includes('/blobs/incoming-');
      const folder = `/blobs/${hash.slice(0, 2)}>`;
      const steps = [
        last(calls, (c) => c.name === 'write' && incoming(c)),
        last(calls, (c) => isSync(c) && incoming(c)),
        last(calls, (c) => c.name.startsWith('rename') && c.text.includes(hash)),
        last(calls, (c) => isSync(c) && c.text.includes(folder)),
      ];
      // The two hashes begin with different digits, so that each makes a folder.
      expect(last(calls, (c) => isSync(c) && /\/blobs>/.test(c.text))).toBeGreaterThan(-1);
      expect(steps[0]).toBeGreaterThanOrEqual(0);
      expect(steps).toEqual([...steps].sort((a, b) => a - b));
    }
  });
});

/** strace makes a system call fail as the kernel would on a full or read-only disk. */
describe('a disk that fails', () => {
  const prepare = async () => {
    const store = await openSqliteStore(dir);
    await store.close();
  };

  test('full while changes are appended: refused with path and advice, all acknowledged kept', async () => {
    await prepare();
    const log = join(dir, 'library.db-wal');
    const full = ['-P', log, '--trace=pwrite64', '--inject=pwrite64:error=ENOSPC:when=120+'];
    const { acknowledged, refused } = await tracedStore([dir, 'append', '1000'], full);
    expect(refused).toMatchObject([
      { code: 'disk-full', place: { file: join(dir, 'library.db') } },
    ]);
    expect(refused[0]?.next).toContain('Make room');
    expect(acknowledged.length).toBeGreaterThan(0);
    const store = await openSqliteStore(dir);
    const { changes } = await store.since(STUDY, 0, 2000);
    expect(changes.map((a) => a.change.id)).toEqual(acknowledged);
    expect((await store.studies())[0]?.changes).toBe(acknowledged.length);
    await store.close();
  });

  test('full while a large append is under way: refused, nothing of it kept', async () => {
    await prepare();
    const log = join(dir, 'library.db-wal');
    const full = ['-P', log, '--trace=pwrite64', '--inject=pwrite64:error=ENOSPC'];
    const { acknowledged, refused } = await tracedStore([dir, 'stage', '5'], full);
    expect([acknowledged, refused.map((r) => r.code)]).toEqual([[], ['disk-full']]);
    const store = await openSqliteStore(dir);
    expect(await store.studies()).toEqual([]);
    await store.close();
  });

  test('full when a blob is fsynced: refused, nothing of it left', async () => {
    await prepare();
    const full = ['--trace=fsync', '--inject=fsync:error=ENOSPC:when=1'];
    const { acknowledged, refused } = await tracedStore([dir, 'blob', '1'], full);
    expect(acknowledged).toEqual([]);
    expect(refused).toMatchObject([{ code: 'disk-full', place: { file: join(dir, 'blobs') } }]);
    expect(await readdir(join(dir, 'blobs'), { recursive: true })).toEqual([]);
  });

  test('read-only: refused with path and advice', async () => {
    await prepare();
    const file = join(dir, 'library.db');
    const readOnly = ['-P', file, '--trace=openat', '--inject=openat:error=EROFS'];
    const { refused } = await tracedStore([dir, 'append', '1'], readOnly);
    expect(refused).toMatchObject([{ code: 'read-only', place: { file } }]);
    expect(refused[0]?.next).toContain('Allow this user to write');
  });

  test('read-only where the library is to be made: refused with path', async () => {
    const folder = join(dir, 'new');
    const readOnly = ['-P', folder, '--trace=mkdir', '--inject=mkdir:error=EROFS'];
    const { refused } = await tracedStore([folder, 'append', '1'], readOnly);
    expect(refused).toMatchObject([{ code: 'read-only', place: { file: folder } }]);
  });
});
