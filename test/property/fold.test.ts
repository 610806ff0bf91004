import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, changesOf, extend, fold, type StudyView } from '../../src/study/index.ts';
import { MadeStudy } from '../study/made-study.ts';
import { changes, dump, idsIn } from './random-changes.ts';

const STUDY = 'study-1';
/** Sets of changes for what must never fail; and for what follows from it. */
const MANY = { numRuns: 1000 };
const RUNS = { numRuns: 150 };

/** The same changes in any order, some of them twice or three times. */
const arrivals = changes.chain((all) =>
  fc
    .tuple(
      fc.shuffledSubarray([...all], { minLength: all.length }),
      fc.subarray([...all]),
      fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 8 }),
    )
    .map(([shuffled, again, sizes]) => ({
      all,
      sizes,
      arrived: [...shuffled, ...structuredClone(again)],
    })),
);

/** The view as it grows, batch by batch, each of one of the sizes in turn. */
function grown(arrived: readonly Change[], sizes: readonly number[]): StudyView {
  let view = fold(STUDY, []);
  for (let at = 0, i = 0; at < arrived.length; i++) {
    const size = sizes[i % sizes.length] ?? 1;
    view = extend(view, arrived.slice(at, at + size));
    at += size;
  }
  return view;
}

describe('whatever three devices do', () => {
  it(`gives one view for any order of arrival and twice, a tree, nothing lost: ${MANY.numRuns} sets`, () => {
    fc.assert(
      fc.property(arrivals, ({ all, arrived }) => {
        const view = fold(STUDY, arrived);
        expect(dump(view)).toBe(dump(fold(STUDY, all)));
        isTree(view, all);
        losesNothing(view, all);
      }),
      MANY,
    );
  }, 60_000);

  it('gives the same view batch by batch, in order or not', () => {
    fc.assert(
      fc.property(arrivals, ({ all, arrived, sizes }) => {
        const whole = dump(fold(STUDY, all));
        expect(dump(grown(all, sizes))).toBe(whole);
        expect(dump(grown(arrived, sizes))).toBe(whole);
      }),
      RUNS,
    );
  });

  it('gives the view of what has arrived, batch by batch, while some is missing', () => {
    fc.assert(
      fc.property(arrivals, fc.nat(997), ({ all, sizes }, n) => {
        const some = all.filter((_, i) => i === 0 || (i * 7 + n) % 5 !== 0);
        expect(dump(grown(some, sizes))).toBe(dump(fold(STUDY, some)));
      }),
      RUNS,
    );
  });

  it('is restored by the undo of an undo', () => {
    fc.assert(
      fc.property(changes, fc.nat(997), (all, n) => {
        const before = fold(STUDY, all);
        const standing = before.gestures().filter((g) => !g.undone);
        const gesture = standing[n % standing.length]?.gesture ?? '';
        const made = MadeStudy.after(all);
        const undo = made.act([], { undoes: gesture });
        expect(made.view.gestures().find((g) => g.gesture === gesture)?.undone).toBe(true);
        made.act([], { undoes: undo.gesture });
        expect(dump(made.view, 'state')).toBe(dump(before, 'state'));
      }),
      RUNS,
    );
  });
});

/** Every node leads to a root, every live one is the child of one. */
function isTree(view: StudyView, all: readonly Change[]): void {
  const { nodes } = idsIn(all);
  for (const id of nodes) expect(stepsToRoot(view, id, nodes.length)).toBeLessThan(nodes.length);
  const children = nodes.flatMap((id) => view.children(id).map((c) => c.id));
  expect(new Set(children).size).toBe(children.length);
  const live = (['part', 'assembly'] as const).flatMap((k) => view.nodes(k).map((n) => n.id));
  expect(children.sort()).toEqual(live.sort());
}

/** Every change is held; every reading stands, withdrawn or not, or its gesture is undone. */
function losesNothing(view: StudyView, all: readonly Change[]): void {
  const undone = new Set(view.gestures().flatMap((g) => (g.undone ? g.gesture : [])));
  for (const change of changesOf(view))
    for (const { id, of } of idsIn([change]).readings) {
      const listed = view.readings(of, 'mass').some((s) => s.reading.id === id);
      expect([view.reading(id) !== undefined, listed]).toEqual(
        undone.has(change.gesture) ? [false, false] : [true, true],
      );
    }
  expect(changesOf(view)).toHaveLength(all.length);
}

function stepsToRoot(view: StudyView, from: string, most: number): number {
  let steps = 0;
  for (let at: string | null = from; at !== null && steps <= most; steps++)
    at = view.node(at)?.parent ?? null;
  return steps - 1;
}
