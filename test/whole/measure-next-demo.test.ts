/** The invented VAN-27 as its tables have it: which reading is named next, and what taking it does. */
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { createStudy, importRecord, Library } from '../../src/app/index.ts';
import { askStudy, loadAll, measureNext, type NextReading } from '../../src/engine/index.ts';
import { openMemoryStore } from '../../src/store/index.ts';
import type { Id, Reading, StudyView } from '../../src/study/index.ts';

const questions = await loadAll();
const library = new Library(openMemoryStore(), '', 'desk');
let study: Id;

beforeAll(async () => {
  const head = { title: 'VAN-27', vehicle: 'VAN-27', by: 'R. Example', invented: true };
  study = await createStudy(library, head);
  await importRecord(library, study, {
    dir: join(ROOT, 'demo/tables/van-27-clean'),
    by: 'R. Example',
    spreads: { 'time.access,time.drive': '15 %' },
  });
});
afterAll(() => library.close());

/** The reading as told: the value as it stands, with the spread of the instrument. */
function readingOf(view: StudyView, next: NextReading): Reading {
  const { of, instrument } = next;
  const cell = of && view.cell(of.subject, of.property);
  if (!of || !instrument || !cell || !('value' in cell) || cell.value.t !== 'scalar')
    throw new Error('no scalar cell');
  return {
    ...{ id: library.newStudy(), of, asWritten: 'as foretold', how: 'measured', by: 'R. Example' },
    value: { ...cell.value, spread: { s: 'normal', u: instrument.u } },
    takenAt: { local: '2026-11-25T10:00:00' },
    ...{ instrument: instrument.label, evidence: [], causes: [] },
  };
}

it('names readings for what is open, and each shrinks the spreads by what was foretold within 5 %', async () => {
  const { open, readings } = measureNext(await library.view(study), questions);
  const spreadOf = (view: StudyView, i: number): number => {
    const thing = open[i];
    const question = questions.get(thing?.question ?? '');
    if (!thing || !question) throw new Error('nothing open');
    const answer = askStudy(question, questions, { view, subject: thing.subject });
    return Number(answer.outs[thing.output]?.u);
  };
  const named = readings.filter((r) => r.why === 'spread' && r.of && r.fall > 0.05);
  expect(named.map((r) => r.label)).toContain('VAN-27, loaded tyre radius');
  expect(named.length).toBeGreaterThan(3);
  // One after the other on the study as it then stands: each is foretold anew.
  for (let taken = 0; taken < 4; taken++) {
    const view = await library.view(study);
    const [first] = measureNext(view, questions).readings.filter((r) => r.why === 'spread' && r.of);
    if (!first) throw new Error('nothing to measure');
    const effects = first.effects.filter(({ u = 1, after = u }) => after < 0.99 * u);
    expect(effects.length).toBeGreaterThan(0);
    const then = measureNext(view, questions).open;
    const before = effects.map(({ open: i }) => [then[i]?.question, then[i]?.output] as const);
    await library.record(study, 'R. Example', 'measure again', [
      { v: 1, e: 'reading.add', reading: readingOf(view, first) },
    ]);
    const after = await library.view(study);
    for (const [k, { u = Number.NaN, after: foretold = Number.NaN }] of effects.entries()) {
      const [id, output] = before[k] ?? [];
      const i = open.findIndex((o) => o.question === id && o.output === output);
      const fell = u - spreadOf(after, i);
      expect(Math.abs(fell / (u - foretold) - 1)).toBeLessThan(0.05);
    }
  }
});
