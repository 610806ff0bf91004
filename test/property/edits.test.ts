/**
 * Whatever edits led to a study, its answers have the digits of a study folded anew: what is
 * kept from one revision to the next saves work and changes nothing.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Answer, askStudy, loadAll } from '../../src/engine/index.ts';
import { type Entry, extend, fold, type RateBook, type StudyView } from '../../src/study/index.ts';
import { MadeStudy, mass, node, point, read, scalar, studyPut, text } from '../study/made-study.ts';

const questions = await loadAll();
const ASKED = ['mass-roll-up', 'mass-closure', 'part-cost', 'install-time', 'joint-census'];
const PARTS = 6;

const rates = (version: string, price: number): RateBook => ({
  ...{ id: version, version, region: 'none', date: `2026-01-0${version.slice(1)}`, currency: 'u' },
  ...{ volumePerYear: 60_000, years: 5, invented: true },
  cells: [
    cell('material/steel', price, 'moneyPerMass', 'steel'),
    cell('process/stamp', 1, 'moneyPerMass', 'stamp'),
    cell('factor/overhead', 1.2, 'ratio', 'overhead'),
  ],
});
const cell = (id: string, x: number, kind: 'moneyPerMass' | 'ratio', match: string) => ({
  ...{ cause: id, id, words: id, kind, x, source: 'invented', how: 'guessed' as const },
  ...{ spread: { s: 'triangular' as const, low: 0.8 * x, high: 1.5 * x }, match: [match] },
});

const start: Entry[] = [
  studyPut(),
  node('van', null, 'vehicle'),
  node('a1', 'van', 'assembly'),
  node('a2', 'van', 'assembly'),
  { v: 1, e: 'rates.put', book: rates('R1', 2) },
  gain(0.001),
  ...['FL', 'FR', 'RL', 'RR'].map((c) => read('van', `cornerLoad.${c}`, mass(5, 0.1))),
  ...Array.from({ length: PARTS }, (_, i) => partOf(i)).flat(),
  node('j1', 'van', 'joint'),
  read('j1', 'count.holes', { t: 'count', n: 4, spread: { s: 'exact' } }),
  read('j1', 'time.access', scalar('time', 1, 0.1)),
  read('j1', 'time.drive', scalar('time', 4, 0.5)),
];

function gain(u: number): Entry {
  const cause = { id: 'gain', what: 'gain', kind: 'ratio', label: 'gain of the scale' } as const;
  return { v: 1, e: 'cause.put', cause: { ...cause, spread: { s: 'normal', u } } };
}

function partOf(i: number): Entry[] {
  const id = `p${i}`;
  return [
    node(id, i % 2 === 0 ? 'a1' : 'a2'),
    read(id, 'mass', mass(3 + i / 7, 0.03), {
      id: `m${i}`,
      causes: [{ cause: 'gain', effect: 3 }],
    }),
    read(id, 'position', point([i / 3, 0.1 * i, 0.5], 0.004)),
    read(id, 'material', text('steel sheet'), { how: 'seen' }),
    read(id, 'process', text('stamp'), { how: 'seen' }),
  ];
}

/** One edit of any kind, from four numbers. */
function edit(kind: number, i: number, size: number, n: number): Entry[] {
  const part = `p${i % PARTS}`;
  const x = 3 + (i % PARTS) / 7;
  const edits: (() => Entry[])[] = [
    () => [read(part, 'mass', mass(x + 0.01 * size, 0.02), { id: `again${n}` })],
    () => [read(part, 'mass', mass(x * (1 + size)), { id: `open${n}`, how: 'guessed' })],
    () => [{ v: 1, e: 'reading.withdraw', id: `m${i % PARTS}`, subject: part, why: 'tare' }],
    () => [read(part, 'material', text(size > 0.5 ? 'steel' : 'unknown'), { id: `mat${n}` })],
    () => [read(part, 'position', point([size, i, 1], 0.003), { id: `at${n}` })],
    () => [node(`new${n}`, 'a2'), read(`new${n}`, 'mass', mass(size + 0.1, 0.01))],
    () => [{ v: 1, e: 'node.move', id: part, parent: size > 0.5 ? 'a1' : 'a2' }],
    () => [{ v: 1, e: 'node.retire', id: part, why: 'counted twice' }],
    () => [gain(0.001 * (1 + size))],
    () => [{ v: 1, e: 'rates.put', book: rates(`R${2 + (n % 7)}`, 2 + size) }],
    () => [read('j1', 'time.drive', scalar('time', 4 + size, 0.4), { id: `drive${n}` })],
    () => [read('van', 'cornerLoad.FL', mass(5 + size / 10, 0.1), { id: `corner${n}` })],
  ];
  return edits[kind % edits.length]?.() ?? [];
}

/** All that an answer says, worked out to the end. */
const said = (answer: Answer): unknown =>
  JSON.parse(JSON.stringify({ ...answer, basis: { ...answer.basis, revision: '' } }));

const askAll = (view: StudyView) =>
  ASKED.flatMap((id) => {
    const question = questions.get(id);
    const subjects = id === 'mass-roll-up' ? ['van', 'a1', 'a2'] : ['van'];
    return question
      ? subjects.map((subject) => askStudy(question, questions, { view, subject }))
      : [];
  });

describe('edits one after the other', () => {
  const steps = fc.array(
    fc.tuple(fc.nat(11), fc.nat(30), fc.double({ min: 0, max: 1, noNaN: true }), fc.boolean()),
    { minLength: 1, maxLength: 8 },
  );

  it('give the answers of the study folded anew, to the last digit', () => {
    fc.assert(
      fc.property(steps, (edits) => {
        const made = new MadeStudy();
        made.act(start);
        let view = fold(made.study, made.changes);
        askAll(view);
        for (const [n, [kind, i, size, looked]] of edits.entries()) {
          view = extend(view, [made.act(edit(kind, i, size, n))]);
          if (looked) askAll(view);
        }
        const found = askAll(view).map(said);
        expect(found).toEqual(askAll(made.view).map(said));
      }),
      { numRuns: 60 },
    );
  });

  it('leave the answers given before as they were', () => {
    const made = new MadeStudy();
    made.act(start);
    const view = fold(made.study, made.changes);
    const [before] = askAll(view);
    const [same] = askAll(fold(made.study, made.changes));
    const after = extend(view, [made.act(edit(0, 1, 1, 0))]);
    askAll(after);
    expect(before && said(before)).toEqual(same && said(same));
  });
});
