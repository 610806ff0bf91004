import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Arc, crossings, layered } from '../../src/drawing/layers.ts';

const arc = (from: number, to: number): Arc => ({ from, to });

/** Layer of each node. */
function layersOf(count: number, arcs: readonly Arc[], widest: number): number[] {
  const { layers } = layered(count, arcs, widest);
  return Array.from({ length: count }, (_, node) =>
    layers.findIndex((layer) => layer.some((item) => 'node' in item && item.node === node)),
  );
}

/** Arcs from lower to higher numbers: no circle is possible. */
const graphs = fc.integer({ min: 1, max: 24 }).chain((count) =>
  fc.record({
    count: fc.constant(count),
    widest: fc.integer({ min: 1, max: 5 }),
    arcs: fc
      .array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 40 })
      .map((pairs) => pairs.filter(([a, b]) => a < b).map(([a, b]) => arc(a, b))),
  }),
);

describe('layers of a graph', () => {
  it('put every node below all that come before it, no more than fit side by side', () => {
    fc.assert(
      fc.property(graphs, ({ count, arcs, widest }) => {
        const at = layersOf(count, arcs, widest);
        expect(at).not.toContain(-1);
        for (const { from, to } of arcs) expect(at[from]).toBeLessThan(at[to] ?? -1);
        const sizes = at.map((layer) => at.filter((other) => other === layer).length);
        expect(Math.max(...sizes)).toBeLessThanOrEqual(widest);
      }),
    );
  });

  it('take every arc through each layer that it passes', () => {
    const arcs = [arc(0, 1), arc(1, 2), arc(2, 3), arc(0, 3)];
    const { layers } = layered(4, arcs, 4);
    expect(layers.map((l) => l.filter((i) => 'bend' in i))).toEqual([
      [],
      [{ bend: 3 }],
      [{ bend: 3 }],
      [],
    ]);
  });

  it('cross no arcs of a tree, whatever the order of its nodes', () => {
    const arcs = [arc(7, 1), arc(7, 4), arc(1, 0), arc(1, 6), arc(4, 2), arc(4, 5), arc(4, 3)];
    expect(crossings(layered(8, arcs, 9).layers, arcs)).toBe(0);
  });

  it('count the crossings of two arcs that change sides', () => {
    const arcs = [arc(0, 3), arc(1, 2)];
    const layers = [
      [{ node: 0 }, { node: 1 }],
      [{ node: 2 }, { node: 3 }],
    ];
    expect(crossings(layers, arcs)).toBe(1);
  });

  it('tell which arc closes a circle, and lay out the rest', () => {
    const arcs = [arc(0, 1), arc(1, 2), arc(2, 0), arc(2, 3)];
    const { layers, circular } = layered(4, arcs, 4);
    expect(circular).toEqual([2]);
    expect(layers).toHaveLength(4);
  });
});
