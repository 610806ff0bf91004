import { expect, test } from 'vitest';
import { openMemoryStore } from '../../src/store/index.ts';
import { refusalOf } from './store-contract.ts';

test('a library in memory can not be copied to a file, and says so', async () => {
  const refusal = await refusalOf(openMemoryStore().backup('/tmp/copy.db'));
  expect(refusal).toMatchObject({ code: 'bad-call', place: { file: '/tmp/copy.db' } });
});
