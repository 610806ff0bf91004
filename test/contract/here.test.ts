import { afterAll, beforeAll, expect, test } from 'vitest';
import { WhoIsHere } from '../../src/server/here.ts';
import { hereAnswer } from '../../src/server/index.ts';
import { Served } from './serve.ts';

let served: Served;
beforeAll(async () => {
  served = await Served.start();
});
afterAll(() => served.close());

const tell = async (page: string, part?: string) => {
  const body = { page, by: 'R. Example', ...(part === undefined ? {} : { part }) };
  return hereAnswer.parse((await served.post('/api/studies/study-1/here', body)).json).others;
};

test('each open page hears of the others of its study, and what they have in hand', async () => {
  expect(await tell('page-1', 'part-a')).toEqual([]);
  expect(await tell('page-2')).toEqual([
    { page: 'page-1', by: 'R. Example', part: 'part-a', device: 'desk' },
  ]);
  expect(await tell('page-1')).toEqual([{ page: 'page-2', by: 'R. Example', device: 'desk' }]);
  expect((await served.call('/api/studies/study-1/changes')).status).toBe(404);
});

test('a page that is not heard of is forgotten, and no study holds more than it can', () => {
  let now = 0;
  const here = new WhoIsHere(() => now);
  const page = (name: string) => ({ page: name, by: 'x', device: 'tablet' });
  here.note('study-1', page('one'));
  now += 14_000;
  expect(here.note('study-1', page('two')).map((o) => o.page)).toEqual(['one']);
  now += 2000;
  expect(here.note('study-1', page('two'))).toEqual([]);
  expect(here.note('study-2', page('three'))).toEqual([]);
  for (let i = 0; i < 500; i++) here.note('study-1', page(`page ${i}`));
  expect(here.note('study-1', page('last')).length).toBeLessThanOrEqual(200);
});
