import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { importAnswer } from '../../src/server/index.ts';
import { refusalsOf, Served } from './serve.ts';
import { STUDY, smallStudy } from './small-study.ts';

let served: Served;
/** Where this file's imports are put while they are read. */
let passing: string;
beforeAll(async () => {
  served = await Served.start();
  passing = await mkdtemp(join(tmpdir(), 'hoistside-passing-'));
  vi.stubEnv('TMPDIR', passing);
  await served.post(`/api/studies/${STUDY}/changes`, { changes: smallStudy().changes });
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await served.close();
  await rm(passing, { recursive: true });
});

const HEADINGS = 'number,name,material,mass [kg],mass u [kg]';
const GOOD = `${HEADINGS}\nA-1,made-up roof,steel,9.8,0.01\nA-2,made-up floor,steel,31.2,0.01\n`;

const send = (body: string | Uint8Array, query: Record<string, string> = {}) => {
  const search = new URLSearchParams({ form: 'parts', file: 'parts.csv', ...query });
  return served.call(`/api/studies/${STUDY}/import?${search}`, {
    method: 'POST',
    body,
    headers: { 'content-type': 'text/csv' },
  });
};
const view = () => served.library.view(STUDY);
const held = async () => (await served.library.store.since(STUDY, 0, 1000)).changes.length;

test('dry: a preview with every guess, and nothing written', async () => {
  const before = await held();
  const answer = await send(GOOD, { dry: '1' });
  expect(answer.status).toBe(200);
  const { preview, imported } = importAnswer.parse(answer.json);
  expect(imported).toBeUndefined();
  expect(preview.counts.rows).toBe(2);
  expect(preview.problems).toEqual([]);
  expect(preview.columns.map((c) => c.field?.field)).toEqual([
    'number',
    'name',
    'material',
    'mass',
    'mass.u',
  ]);
  expect(await held()).toBe(before);
});

test('dry: what is wrong stands in the preview', async () => {
  const answer = await send(`${HEADINGS}\nA-1,roof,steel,-9.8,0.01\n`, { dry: '1' });
  expect(answer.status).toBe(200);
  const { preview } = importAnswer.parse(answer.json);
  expect(preview.problems[0]).toMatchObject({
    code: 'bad-table',
    place: { file: 'parts.csv', row: 2, column: 'mass [kg]' },
    value: '-9.8',
  });
});

describe('refused, and nothing written', () => {
  test.each<[string, string | Uint8Array, Record<string, string>, number, string]>([
    ['a negative mass', `${HEADINGS}\nA-1,roof,steel,-9.8,0.01\n`, {}, 422, 'bad-table'],
    ['a ragged row after a good one', `${GOOD}A-3,lid\n`, {}, 422, 'bad-table'],
    ['a binary file', Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 0, 0]), {}, 422, 'bad-table'],
    ['an unknown form', GOOD, { form: 'wheels' }, 400, 'bad-call'],
    ['no name of the file', GOOD, { file: '' }, 400, 'bad-call'],
    ['another word for dry', GOOD, { dry: 'yes' }, 400, 'bad-call'],
    ['an unknown parameter', GOOD, { wet: '1' }, 400, 'bad-call'],
    ['overrides that are no JSON', GOOD, { overrides: '{' }, 400, 'bad-call'],
    ['an unknown override', GOOD, { overrides: '{"colour":"red"}' }, 400, 'bad-call'],
  ])('%s', async (_what, body, query, status, code) => {
    const before = await held();
    const answer = await send(body, query);
    expect(answer.status).toBe(status);
    expect(refusalsOf(answer)[0]?.code).toBe(code);
    expect(await held()).toBe(before);
  });

  test('no file', async () => {
    const path = `/api/studies/${STUDY}/import?form=parts&file=parts.csv`;
    const answer = await served.call(path, { method: 'POST' });
    expect(answer.status).toBe(400);
    expect(refusalsOf(answer)[0]).toMatchObject({ code: 'bad-call', value: '0 bytes' });
  });

  test('a study that is not there', async () => {
    const path = '/api/studies/nowhere/import?form=parts&file=parts.csv';
    expect((await served.call(path, { method: 'POST', body: GOOD })).status).toBe(404);
  });
});

test('imports the table and says so', async () => {
  const answer = await send(GOOD, { by: 'R. Example' });
  expect(answer.status).toBe(200);
  const { imported } = importAnswer.parse(answer.json);
  expect(imported?.rows).toBe(2);
  const roof = (await view()).find('A-1');
  const [reading] = (await view()).readings(roof?.id ?? '', 'mass');
  expect(reading?.reading).toMatchObject({
    value: { t: 'scalar', kind: 'mass', x: 9.8, spread: { s: 'normal', u: 0.01 } },
    by: 'R. Example',
    source: { file: 'parts.csv', row: 2, column: 'mass [kg]' },
  });
});

test('leaves no file behind, whether it was imported or refused', async () => {
  expect((await send(GOOD, { dry: '1' })).status).toBe(200);
  expect((await send('no,table\n1\n')).status).toBe(422);
  expect(await readdir(passing)).toEqual([]);
});

test('overrides say what a heading means', async () => {
  const body = 'code;Gewicht\nB-1;2,5\n';
  const columns = { code: 'number', Gewicht: 'mass' };
  const overrides = JSON.stringify({ columns, units: { mass: 'g' }, decimal: ',' });
  expect((await send(body, { overrides })).status).toBe(200);
  const part = (await view()).find('B-1');
  const [reading] = (await view()).readings(part?.id ?? '', 'mass');
  expect(reading?.reading.value).toMatchObject({ x: 0.0025 });
});

describe('a workbook', () => {
  const path = new URL('../fixtures/workbooks/weights.xlsx', import.meta.url);

  test('comes in by the same door, told by its bytes, the sheet named or not', async () => {
    const bytes = await readFile(path);
    const dry = importAnswer.parse((await send(bytes, { dry: '1', file: 'w.xlsx' })).json).preview;
    expect(dry.assumed[0]).toMatchObject({ what: 'sheet', value: 'Parts', given: false });
    expect(dry.notes[0]).toMatchObject({ code: 'workbook', value: 'F5' });
    const answer = await send(bytes, { sheet: 'Day 2', file: 'w.xlsx' });
    expect(importAnswer.parse(answer.json).imported).toEqual({ rows: 1, changes: 1 });
    expect((await view()).find('W-1')?.name).toBe('rail');
  });

  test('cut short, without the sheet, or a sheet of a text: refused, nothing kept', async () => {
    const bytes = await readFile(path);
    const before = await held();
    for (const [body, sheet] of [
      [bytes.subarray(0, 3000), undefined],
      [bytes, 'Day 3'],
      [Buffer.from(GOOD), 'Day 2'],
    ] as const) {
      const answer = await send(body, { file: 'w.xlsx', ...(sheet ? { sheet } : {}) });
      expect([400, 422]).toContain(answer.status);
      expect(refusalsOf(answer)[0]?.place.file).toBe('w.xlsx');
    }
    expect(await held()).toBe(before);
  });
});
