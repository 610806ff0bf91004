import { afterAll, beforeAll, expect, test } from 'vitest';
import { refusalsOf, Served } from './serve.ts';
import { STUDY, smallStudy } from './small-study.ts';

let served: Served;
beforeAll(async () => {
  served = await Served.start();
  await served.post(`/api/studies/${STUDY}/changes`, { changes: smallStudy().changes });
});
afterAll(() => served.close());

test('the report of a study is a PDF', async () => {
  const answer = await served.call(`/api/studies/${STUDY}/report.pdf`);
  expect([answer.status, answer.text.slice(0, 300)]).toMatchObject([
    200,
    expect.stringMatching(/^%PDF-1\.\d/),
  ]);
  expect(answer.headers['content-type']).toBe('application/pdf');
  expect(answer.bytes.subarray(-8).toString('latin1')).toContain('%%EOF');
}, 60_000);

test('a study that is not there', async () => {
  const answer = await served.call('/api/studies/nowhere/report.pdf');
  expect(answer.status).toBe(404);
  expect(refusalsOf(answer)[0]?.code).toBe('not-found');
});
