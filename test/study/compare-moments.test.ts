import { describe, expect, it } from 'vitest';
import { compareMoments, type Entry, RefusalError, viewAt } from '../../src/study/index.ts';
import { MadeStudy, mass, node, read, START_MS, studyPut } from './made-study.ts';

const started = () => {
  const made = new MadeStudy();
  const first = made.act([studyPut(), node('van', null, 'vehicle'), node('a1', 'van', 'assembly')]);
  made.act([node('p1', 'van'), node('p2', 'van'), read('p1', 'mass', mass(10, 0.1), { id: 'r1' })]);
  return { made, first };
};
const between = (made: MadeStudy, from: { readonly gesture: string }, to?: { gesture: string }) =>
  compareMoments(made.view, { after: from.gesture }, to ? { after: to.gesture } : { at: 'now' });
const ids = (list: readonly { readonly id: string }[]) => list.map((n) => n.id);
const withdraw = (id: string, subject: string): Entry => ({
  ...{ v: 1, e: 'reading.withdraw', id, subject, why: 'misread' },
});

describe('two moments', () => {
  it('differ in what was added', () => {
    const { made, first } = started();
    const { nodes, readings, values } = between(made, first);
    expect(ids(nodes.added)).toEqual(['p1', 'p2']);
    expect(readings.added.map((s) => s.reading.id)).toEqual(['r1']);
    expect(values).toMatchObject([
      {
        of: { subject: 'p1', property: 'mass', condition: 'kerb' },
        before: { missing: true, why: 'no reading' },
        after: { value: { x: 10 }, how: 'measured', rule: 'only reading' },
      },
    ]);
  });

  it('differ in what was moved, renamed, retired and corrected', () => {
    const { made } = started();
    const before = made.act([{ v: 1, e: 'study.put', set: { note: 'second day' } }]);
    made.act([
      { v: 1, e: 'node.move', id: 'p1', parent: 'a1' },
      { v: 1, e: 'node.name', id: 'p1', name: 'bracket' },
      { v: 1, e: 'node.retire', id: 'p2', why: 'counted twice' },
      withdraw('r1', 'p1'),
      read('p1', 'mass', mass(11, 0.1), { id: 'r2' }),
      { v: 1, e: 'study.put', set: { title: 'Another title' } },
    ]);
    const { header, nodes, readings, values } = between(made, before);
    expect(header).toEqual([{ field: 'title', before: 'A made-up study', after: 'Another title' }]);
    expect(nodes.moved.map((p) => [p.before.parent, p.after.parent])).toEqual([['van', 'a1']]);
    expect(nodes.renamed.map((p) => [p.before.name, p.after.name])).toEqual([
      ['name of p1', 'bracket'],
    ]);
    expect(nodes.gone).toMatchObject([{ node: { id: 'p2' }, why: 'retired' }]);
    expect(readings.withdrawn).toMatchObject([{ reading: { id: 'r1' } }]);
    expect(readings.added).toMatchObject([{ reading: { id: 'r2' } }]);
    expect(values).toMatchObject([{ before: { value: { x: 10 } }, after: { value: { x: 11 } } }]);
  });

  it('are told apart from what an undo took back, both ways', () => {
    const { made, first } = started();
    const added = made.act([node('p3', 'van'), read('p3', 'mass', mass(1, 0.1), { id: 'r3' })]);
    const undo = made.act([], { undoes: added.gesture });
    const gone = between(made, added, undo);
    expect(gone.nodes.gone).toMatchObject([{ node: { id: 'p3' }, why: 'undone' }]);
    expect(gone.readings.undone).toMatchObject([{ reading: { id: 'r3' } }]);
    const redo = made.act([], { undoes: undo.gesture });
    expect(ids(between(made, undo, redo).nodes.added)).toEqual(['p3']);
    expect(ids(between(made, first, undo).nodes.added)).toEqual(['p1', 'p2']);
  });

  it('do not differ where the value in force stays, though a reading came', () => {
    const { made } = started();
    const before = made.act([read('p2', 'mass', mass(5, 0.1), { id: 'r4' })]);
    made.act([read('p2', 'mass', mass(7, 2), { id: 'r5', how: 'guessed' })]);
    const { readings, values } = between(made, before);
    expect(readings.added).toHaveLength(1);
    expect(values).toEqual([]);
  });

  it('see a withdrawal that was undone, and a retirement that was', () => {
    const { made } = started();
    const cut = made.act([withdraw('r1', 'p1'), { v: 1, e: 'node.retire', id: 'p2', why: 'lost' }]);
    const undo = made.act([], { undoes: cut.gesture });
    const { readings, nodes } = between(made, cut, undo);
    expect(readings.back).toMatchObject([{ reading: { id: 'r1' } }]);
    expect(ids(nodes.back)).toEqual(['p2']);
  });

  it('may be times, the start, and now', () => {
    const { made, first } = started();
    expect(viewAt(made.view, { atMs: START_MS + 1 }).revision).toBe(
      viewAt(made.view, { after: first.gesture }).revision,
    );
    const all = compareMoments(made.view, { at: 'start' }, { at: 'now' });
    expect(ids(all.nodes.added)).toEqual(['a1', 'p1', 'p2', 'van']);
    const none = compareMoments(made.view, { at: 'now' }, { atMs: START_MS + 60_000 });
    expect([none.nodes.added, none.readings.added, none.values]).toEqual([[], [], []]);
  });

  it('take all of a gesture made of several changes', () => {
    const { made } = started();
    const one = made.act([node('p4', 'van')]);
    const two = made.act([node('p5', 'van')]);
    made.changes[made.changes.length - 1] = { ...two, gesture: one.gesture };
    expect(viewAt(made.view, { after: one.gesture }).node('p5')).toBeDefined();
  });

  it('must be there', () => {
    const { made } = started();
    expect(() => viewAt(made.view, { after: 'none' })).toThrow(RefusalError);
    expect(() => viewAt(made.view, { after: 'none' })).toThrow(/found: "none"/);
  });
});
