import { expect, test } from 'vitest';
import { readTrace, unsyncedAnswers } from './system-calls.ts';

const WRITE = '7 pwrite64(3</t/library.db-wal>, "x", 1, 0) = 1';
const SYNC = '7 fdatasync(3</t/library.db-wal>) = 0';
const ANSWER = '7 writev(9<socket:[1]>, [{iov_base="HTTP/1.1 200 OK", iov_len=15}], 1) = 15';

const early = (...lines: string[]): number =>
  unsyncedAnswers(readTrace(lines.join('\n')), /library\.db-wal$/, /HTTP\/1\.1 200/).length;

test('an answer after the sync of what was written is in order', () => {
  expect(early(WRITE, SYNC, ANSWER)).toBe(0);
  expect(early(WRITE, SYNC, ANSWER, WRITE, SYNC, ANSWER)).toBe(0);
});

test.each([
  ['no sync', [WRITE, ANSWER]],
  ['the sync after the answer', [WRITE, ANSWER, SYNC]],
  ['a write after the sync', [WRITE, SYNC, WRITE, ANSWER]],
  ['the sync of another file', [WRITE, SYNC.replace('db-wal', 'db'), ANSWER]],
  ['a sync that failed', [WRITE, SYNC.replace('= 0', '= -1 EIO'), ANSWER]],
  ['nothing written', [SYNC, ANSWER]],
  ['the sync of the answer before', [WRITE, SYNC, ANSWER, WRITE, ANSWER]],
  [
    'a sync that another thread ends after the answer',
    [WRITE, '8 fsync(3</t/library.db-wal> <unfinished ...>', ANSWER, '8 <... fsync resumed>) = 0'],
  ],
])('%s is seen', (_what, lines) => {
  expect(early(...lines)).toBe(1);
});
