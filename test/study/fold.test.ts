import { describe, expect, it } from 'vitest';
import {
  type Change,
  clockText,
  type Entry,
  extend,
  fold,
  readClock,
  tick,
} from '../../src/study/index.ts';
import { MadeStudy, mass, node, read, studyPut } from './made-study.ts';

function started(): MadeStudy {
  const made = new MadeStudy();
  made.act([studyPut(), node('van', null, 'vehicle'), node('a1', 'van', 'assembly')]);
  made.act([node('p1', 'a1'), read('p1', 'mass', mass(10, 0.1))]);
  for (const device of ['tablet', 'phone']) made.sync(device);
  return made;
}
const codes = (made: MadeStudy) => made.view.findings.map((f) => f.code);
const name = (id: string, words: string): Entry => ({ v: 1, e: 'node.name', id, name: words });
const move = (id: string, parent: string): Entry => ({ v: 1, e: 'node.move', id, parent });

describe('two devices', () => {
  it('that edit one name out of sight of each other: the later stands, with a finding', () => {
    const made = started();
    made.act([name('p1', 'bracket')], { device: 'tablet', by: 'A. Maker' });
    made.act([name('p1', 'brace')], { device: 'phone', by: 'B. Maker' });
    expect(made.view.node('p1')?.name).toBe('brace');
    expect(made.view.findings).toMatchObject([
      { code: 'edited-at-once', place: { subject: 'p1' }, level: 'doubt' },
    ]);
    expect(made.view.findings[0]?.what).toContain('B. Maker');
    expect(made.view.findings[0]?.what).toContain('A. Maker');
  });

  it('that edit it one after the other, having seen the first, leave no finding', () => {
    const made = started();
    made.act([name('p1', 'bracket')], { device: 'tablet' });
    made.sync('phone');
    made.act([name('p1', 'brace')], { device: 'phone' });
    expect(codes(made)).toEqual([]);
  });

  it('that edit different things leave no finding', () => {
    const made = started();
    made.act([name('p1', 'bracket')], { device: 'tablet' });
    made.act([name('a1', 'front')], { device: 'phone' });
    made.act([read('p1', 'mass', mass(10.1, 0.1))], { device: 'phone' });
    expect(codes(made)).toEqual([]);
  });

  it('that choose and put the study at once are found by field', () => {
    const made = started();
    const put = (set: object): Entry => ({ v: 1, e: 'study.put', set });
    made.act([put({ title: 'One' })], { device: 'tablet' });
    made.act([put({ note: 'no clash' })], { device: 'phone' });
    expect(codes(made)).toEqual([]);
    made.act([put({ title: 'Two' })], { device: 'phone' });
    expect(codes(made)).toEqual(['edited-at-once']);
    expect(made.view.header).toMatchObject({ title: 'Two', note: 'no clash' });
  });

  it('that move two assemblies below each other make no cycle', () => {
    const made = started();
    made.act([node('a2', 'van', 'assembly')]);
    for (const device of ['tablet', 'phone']) made.sync(device);
    made.act([move('a1', 'a2')], { device: 'tablet' });
    made.act([move('a2', 'a1')], { device: 'phone' });
    expect(codes(made)).toContain('move-makes-cycle');
    expect(made.view.node('a2')?.parent).toBe('van');
    expect(made.view.nodes('part').map((n) => n.id)).toEqual(['p1']);
  });
});

describe('what does not arrive or fit', () => {
  it('a gap in a device’s count is found, and closes', () => {
    const made = started();
    const [first, second] = [
      made.act([name('p1', 'one')], { device: 'tablet' }),
      made.act([name('p1', 'two')], { device: 'tablet' }),
    ];
    const without = made.changes.filter((c) => c !== first);
    const gap = { code: 'changes-not-arrived', level: 'gap', value: 'tablet' };
    expect(fold(made.study, without).findings).toMatchObject([gap]);
    expect(extend(fold(made.study, without), [first]).findings).toEqual([]);
    const start = fold(made.study, made.changes.slice(0, 2));
    expect(extend(start, [second]).findings).toMatchObject([gap]);
  });

  it('an entry of a newer version is kept and found', () => {
    const made = started();
    const newer = { v: 2, e: 'node.add', node: { anything: true } } as unknown as Entry;
    const unknown = { v: 1, e: 'seal.cut', id: 'p1' } as unknown as Entry;
    made.act([newer, unknown, name('p1', 'still folded')]);
    expect(codes(made)).toEqual(['entry-of-newer-version', 'entry-of-newer-version']);
    expect(made.view.findings[1]?.what).toContain('"seal.cut" of version 1');
    expect(made.view.node('p1')?.name).toBe('still folded');
  });

  it('one id with other bytes: one of the two stands in any order, found once', () => {
    const made = started();
    const a = made.act([name('p1', 'aaa')]);
    const b: Change = { ...a, entries: [name('p1', 'bbb')] };
    const before = made.changes.filter((c) => c !== a);
    const views = [
      [...before, a, b],
      [b, a, ...before],
      [b, ...before, a, b, a, { ...b }],
    ].map((order) => fold(made.study, order));
    expect(new Set(views.map((v) => v.node('p1')?.name)).size).toBe(1);
    for (const view of views)
      expect(view.findings).toMatchObject([{ code: 'change-id-used-twice', value: a.id }]);
    const more = extend(fold(made.study, [...before, a, b]), [a]);
    expect(more.findings).toEqual(views[0]?.findings);
  });

  it('the same bytes twice change nothing', () => {
    const made = started();
    const twice = [...made.changes, ...structuredClone(made.changes)];
    expect(fold(made.study, twice).findings).toEqual([]);
    expect(fold(made.study, twice).revision).toBe(made.view.revision);
  });

  it('a node under a parent that is not there hangs on the root, and is found', () => {
    const made = started();
    made.act([node('lost', 'nowhere')]);
    expect(made.view.node('lost')?.parent).toBe('van');
    expect(codes(made)).toEqual(['parent-unknown']);
  });

  it('a number used twice is found, at the adding and at the naming', () => {
    const made = started();
    made.act([node('p2', 'a1', 'part', 'P1')]);
    made.act([node('p3', 'a1', 'part', 'P3')]);
    made.act([{ v: 1, e: 'node.name', id: 'p3', label: 'P1' }]);
    expect(codes(made)).toEqual(['label-used-twice', 'label-used-twice']);
    expect(made.view.find('P1')?.id).toBe('p1');
    expect(made.view.find('P3')).toBeUndefined();
  });
});

describe('undo', () => {
  it('takes back a gesture, and the undo of the undo puts it back', () => {
    const made = started();
    const named = made.act([name('p1', 'bracket')]);
    const undo = made.act([], { undoes: named.gesture });
    expect(made.view.node('p1')?.name).toBe('name of p1');
    expect(
      made.view
        .gestures()
        .filter((g) => g.undone)
        .map((g) => g.gesture),
    ).toEqual([named.gesture]);
    made.act([], { undoes: undo.gesture });
    expect(made.view.node('p1')?.name).toBe('bracket');
  });

  it('holds for a change of the same gesture that arrives after the undo', () => {
    const made = started();
    const first = made.act([name('p1', 'part one of an import')]);
    made.act([], { undoes: first.gesture });
    const straggler = { ...made.act([node('late', 'a1')]), gesture: first.gesture };
    const held = made.changes.slice(0, -1);
    const whole = fold(made.study, [...held, straggler]);
    expect(whole.node('late')).toBeUndefined();
    expect(extend(fold(made.study, held), [straggler]).node('late')).toBeUndefined();
  });
});

describe('links', () => {
  const link = (id: string, to: string | null): Entry => ({
    ...{ v: 1, e: 'link.add', link: { id, kind: 'joins', from: 'j1', to, role: 'from' } },
  });

  it('stand once at each end, also when added again', () => {
    const made = started();
    made.act([node('j1', 'a1', 'joint'), link('l1', 'p1'), link('l2', null)]);
    made.act([link('l1', 'p1')]);
    expect(made.view.links('joins', 'p1').map((l) => l.id)).toEqual(['l1']);
    expect(made.view.links('joins', 'j1').map((l) => l.id)).toEqual(['l1', 'l2']);
    made.act([{ v: 1, e: 'link.retire', id: 'l1' }, link('l1', 'p1')]);
    expect(made.view.links('joins', 'j1').map((l) => l.id)).toEqual(['l2', 'l1']);
    made.act([{ v: 1, e: 'node.retire', id: 'j1', why: 'counted twice' }]);
    expect(made.view.links('joins')).toEqual([]);
  });
});

describe('hybrid clock', () => {
  it('goes on beyond the wall time of a device that is ahead', () => {
    const ahead = { ms: 2000, count: 3, device: 'b' };
    expect(tick(ahead, 1000, 'a')).toEqual({ ms: 2000, count: 4, device: 'a' });
    expect(tick(ahead, 3000, 'a')).toEqual({ ms: 3000, count: 0, device: 'a' });
  });

  it('sorts as text in the order of happening, past any count', () => {
    const last = { ms: 5, count: 0xffff, device: 'a' };
    const next = tick(last, 5, 'a');
    expect(clockText(next) > clockText(last)).toBe(true);
    expect(readClock(clockText(next))).toEqual(next);
  });
});
