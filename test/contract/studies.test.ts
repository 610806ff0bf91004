import { afterAll, beforeAll, expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { aboutAnswer, newStudyAnswer, studiesAnswer } from '../../src/server/index.ts';
import { refusalsOf, Served } from './serve.ts';
import { STUDY, smallStudy } from './small-study.ts';

let served: Served;
beforeAll(async () => {
  served = await Served.start();
});
afterAll(() => served.close());

test('about tells name and version', async () => {
  const { status, json } = await served.call('/api/about');
  expect(status).toBe(200);
  expect(aboutAnswer.parse(json)).toEqual({
    name: packageJson.name,
    version: packageJson.version,
    node: process.versions.node,
  });
});

test('lists no study, then the one that was posted', async () => {
  expect((await served.call('/api/studies')).json).toEqual({ studies: [] });
  await served.post(`/api/studies/${STUDY}/changes`, { changes: smallStudy().changes });
  const { json } = await served.call('/api/studies');
  studiesAnswer.parse(json);
  await expect(`${JSON.stringify(json, null, 2)}\n`).toMatchFileSnapshot('snapshots/studies.json');
});

test('makes a study with its vehicle', async () => {
  const made = await served.post('/api/studies', {
    title: 'a second one',
    vehicle: 'made-up van 2',
    invented: true,
    by: 'R. Example',
  });
  expect(made.status).toBe(200);
  const { study } = newStudyAnswer.parse(made.json);
  const { studies } = studiesAnswer.parse((await served.call('/api/studies')).json);
  expect(studies.find((s) => s.study === study)).toMatchObject({
    title: 'a second one',
    vehicle: 'made-up van 2',
    invented: true,
    changes: 1,
    parts: 0,
  });
  expect((await served.library.view(study)).root()?.kind).toBe('vehicle');
  expect((await served.library.view(study)).gestures()[0]?.by).toBe('R. Example');
});

test.each([
  ['no vehicle', { title: 'x' }, 'body.vehicle', 'this is missing'],
  ['an empty title', { title: '  ', vehicle: 'x' }, 'body.title', 'it does not fit'],
  ['a number for a title', { title: 7, vehicle: 'x' }, 'body.title', 'it does not fit'],
  ['an unknown field', { title: 'x', vehicle: 'x', color: 1 }, 'body', 'no field named "color"'],
])('refuses %s and makes nothing', async (_what, body, column, why) => {
  const before = (await served.call('/api/studies')).text;
  const answer = await served.post('/api/studies', body);
  expect(answer.status).toBe(400);
  const [first] = refusalsOf(answer);
  expect(first).toMatchObject({ code: 'bad-call', place: { column } });
  expect(first?.why).toContain(why);
  expect((await served.call('/api/studies')).text).toBe(before);
});
