/**
 * Ways from wet to dry. The search is held against the simple paths and the shortest paths of a
 * general-purpose graph library (graphology) on made-up graphs; the demo (invented) shows that a
 * record gives what it should. Questions crossing-paths, crossing-count and leak-budget.
 */
import fc from 'fast-check';
import Graph from 'graphology';
import { describe, expect, it } from 'vitest';
import { SEALED, sealClass } from '../../../src/data/index.ts';
import { SealingGraph, type SealingIn, wetPaths } from '../../../src/engine/index.ts';
import { demoStudy } from '../joining/demo-study.ts';
import { askRegistered, out } from '../made-question.ts';
import { asked, codes, shown } from '../structure/asked.ts';

const SEALS = ['open', 'none', 'cord', 'weld'] as const;
const MEDIA = ['wet', 'drained', 'dry'] as const;

/** Up to seven zones, each pair parted by at most one barrier that one thing crosses. */
const madeUp: fc.Arbitrary<SealingIn> = fc
  .record({
    media: fc.array(fc.constantFrom(...MEDIA), { minLength: 2, maxLength: 7 }),
    seals: fc.array(fc.option(fc.constantFrom(...SEALS)), { minLength: 21, maxLength: 21 }),
  })
  .map(({ media, seals }) => {
    const zones = media.map((medium, i) => ({ name: `z${i}`, medium }));
    const pairs = zones.flatMap((a, i) => zones.slice(i + 1).map((b) => [a.name, b.name] as const));
    const used = pairs.flatMap(([a, b], i) => {
      const seal = seals[i];
      return seal ? [{ name: `${a}-${b}`, a, b, seal }] : [];
    });
    return {
      zones,
      barriers: used.map(({ name, a, b }) => ({ name, a, b })),
      crossings: used.map(({ name, seal }) => ({
        ...{ name: `x ${name}`, barriers: [name], seal, count: 1 },
      })),
    };
  });

/** Every simple path from a wet to a dry zone with no other wet or dry zone between, by brute force. */
function simplePaths(input: SealingIn): { readonly zones: string[]; readonly seals: number }[] {
  const graph = new Graph({ type: 'undirected' });
  for (const z of input.zones) graph.addNode(z.name, z);
  input.barriers.forEach(({ a, b }, i) => {
    const rank = sealClass(input.crossings[i]?.seal ?? '')?.rank ?? 0;
    graph.addEdge(a, b, { weight: rank >= SEALED ? 1 : 0 });
  });
  const mediumOf = (z: string) => graph.getNodeAttribute(z, 'medium');
  const walk = (zones: string[], seals: number): { zones: string[]; seals: number }[] => {
    const at = zones.at(-1) ?? '';
    if (mediumOf(at) === 'dry') return [{ zones, seals }];
    return graph.neighbors(at).flatMap((next) => {
      if (zones.includes(next) || mediumOf(next) === 'wet') return [];
      return walk([...zones, next], seals + graph.getEdgeAttribute(at, next, 'weight'));
    });
  };
  return input.zones.flatMap((z) => (z.medium === 'wet' ? walk([z.name], 0) : []));
}

describe('wet paths', () => {
  it('are the simple paths of the graph, fewest seals first', () => {
    fc.assert(
      fc.property(madeUp, (input) => {
        const found = wetPaths(new SealingGraph(input));
        const expected = simplePaths(input);
        fc.pre(expected.length <= 200);
        const text = (p: { readonly zones: readonly string[] }) => p.zones.join(' ');
        expect(found.paths.map(text).sort()).toEqual(expected.map(text).sort());
        const seals = found.paths.map((p) => p.seals);
        expect(seals).toEqual([...seals].sort((a, b) => a - b));
        expect(seals[0]).toBe(
          expected.length === 0 ? undefined : Math.min(...expected.map((p) => p.seals)),
        );
        expect(found.cut).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  it('name the weakest barrier, and are as weak as the weakest of what is side by side', () => {
    const graph = new SealingGraph({
      zones: [
        { name: 'out', medium: 'wet' },
        { name: 'cavity', medium: 'drained' },
        { name: 'cells', medium: 'dry' },
      ],
      barriers: [
        { name: 'outer', a: 'out', b: 'cavity' },
        { name: 'inner', a: 'cavity', b: 'cells' },
      ],
      crossings: [
        { name: 'ring', barriers: ['outer'], seal: 'O-ring', count: 1 },
        { name: 'cord', barriers: ['outer'], seal: 'cord', count: 1 },
        { name: 'weld', barriers: ['inner'], seal: 'weld', count: 1 },
      ],
    });
    const [path] = wetPaths(graph).paths;
    expect(path?.seals).toBe(2);
    expect(path?.weakest.barriers.map((b) => b.name)).toEqual(['outer']);
    expect(path?.weakest.rank).toBe(sealClass('cord')?.rank);
    expect(path?.tightest.barriers.map((b) => b.name)).toEqual(['inner']);
  });

  it('stop where there are too many of them, and say so', () => {
    const names = Array.from({ length: 12 }, (_, i) => `z${i}`);
    const pairs = names.flatMap((a, i) => names.slice(i + 1).map((b) => ({ a, b, name: a + b })));
    const media = (i: number) => (i === 0 ? 'wet' : i === 11 ? 'dry' : 'drained');
    const graph = new SealingGraph({
      zones: names.map((name, i) => ({ name, medium: media(i) })),
      barriers: pairs,
      crossings: pairs.map(({ name }) => ({
        ...{ name: `x${name}`, barriers: [name], seal: 'cord', count: 1 },
      })),
    });
    const { paths, cut } = wetPaths(graph);
    expect(cut).toBe(true);
    expect(paths[0]?.seals).toBe(1);
  });
});

const ZONES = [
  { name: 'out', medium: 'wet' },
  { name: 'cells', medium: 'dry' },
];
const BARRIERS = [{ name: 'lid', a: 'out', b: 'cells' }];
const bare = (
  zones: readonly Record<string, string>[],
  barriers: readonly Record<string, string>[],
  crossings: readonly Record<string, string>[],
) => asked('crossing-paths', { zones, barriers, crossings });
const cord = { name: 'gasket', through: 'lid', seal: 'cord', count: '1' };

describe('what is missing is found with its place', () => {
  it.each([
    ['zone-touches-nothing', 'loft', [...ZONES, { name: 'loft', medium: 'dry' }], BARRIERS, [cord]],
    [
      'medium-unknown',
      'out',
      [{ name: 'out', medium: 'purple' }, ...ZONES.slice(1)],
      BARRIERS,
      [cord],
    ],
    ['barrier-open-side', 'rib', ZONES, [...BARRIERS, { name: 'rib', a: 'cells', b: '' }], [cord]],
    [
      'crossing-without-barrier',
      'tube',
      ZONES,
      BARRIERS,
      [cord, { name: 'tube', through: '', seal: 'ring', count: '1' }],
    ],
    [
      'seal-unknown',
      'hose',
      ZONES,
      BARRIERS,
      [cord, { name: 'hose', through: 'lid', seal: 'magic', count: '1' }],
    ],
  ])('%s', async (code, subject, zones, barriers, crossings) => {
    const answer = await bare(zones, barriers, crossings);
    const finding = answer.findings.find((f) => f.code === code);
    expect(finding?.place.subject).toBe(subject);
    expect(finding?.next).not.toBe('');
  });

  it('nothing is found where nothing is missing; without a dry zone that is said', async () => {
    expect(codes(await bare(ZONES, BARRIERS, [cord]))).toEqual([]);
    const wet = [ZONES[0] ?? {}, { name: 'cells', medium: 'wet' }];
    expect(codes(await bare(wet, BARRIERS, [cord]))).toContain('no-dry-zone');
  });
});

describe('of the demo (invented)', async () => {
  const view = await demoStudy('clean');
  it('six screws of 40 crossings are not sealed, and water needs to pass no seal', async () => {
    const answer = await askRegistered('crossing-paths', view);
    expect(out(answer, 'into').x).toBe(40);
    expect(out(answer, 'unsealed').x).toBe(6);
    expect(out(answer, 'least').x).toBe(0);
    const ways = answer.detail?.rows.map((r) => r[0]);
    expect(ways).toContain('Z-OUT → Z-CAV-L → Z-DRY');
    expect(answer.detail?.rows.find((r) => r[2] === 'B-LID')?.[3]).toBe('X-LID');
    expect(answer.figures?.map((f) => f.f)).toEqual(['graph']);
  });

  it('crossings and seal length a pack, a litre and a kWh', async () => {
    const answer = await askRegistered('crossing-count', view, view.find('40')?.id);
    // Gasket 5.54, nine seams of 1.46, perimeter 5.5, headers, ports and vents 1.38 m.
    expect(shown(answer, 'seal')).toBeCloseTo(5.54 + 9 * 1.46 + 5.5 + 1.38, 6);
    expect(shown(answer, 'pieces')).toBe(40);
    expect(shown(answer, 'litre')).toBeCloseTo(40 / (15.2 * 12.5 * 1.7), 6);
    expect(shown(answer, 'energy')).toBeCloseTo(40 / 56.3, 6);
    expect(answer.groups?.find((g) => g.group === 'seam')?.terms.pieces?.x).toBe(10);
  });

  it('the budget of its dry zone', async () => {
    const answer = await askRegistered('leak-budget', view, view.find('Z-DRY')?.id);
    const leak = await askRegistered('leak-from-decay', view, view.find('Z-DRY')?.id);
    expect(out(answer, 'margin').x).toBeCloseTo(0.15 - out(leak, 'flow').x, 12);
    expect(out(answer, 'each').x).toBeCloseTo(0.15 / 40, 12);
    expect(out(answer, 'metre').x).toBeCloseTo(0.15 / 25.56, 9);
    expect(out(answer, 'rest').x).toBeCloseTo(out(leak, 'flow').x, 12);
  });
});
