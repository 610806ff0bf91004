/**
 * The graph behind removal-path: what must be undone before what, against a general-purpose
 * graph library written by others (graphology, graphology-dag) on random graphs; alternatives
 * against trying every one; own small cases worked by hand.
 */
import { DirectedGraph } from 'graphology';
import { hasCycle } from 'graphology-dag';
import { describe, expect, it } from 'vitest';
import {
  allCircles,
  type GraphInput,
  planRemoval,
  RemovalGraph,
} from '../../../src/engine/index.ts';
import { facts, graphFrom, randomGraph, type Short } from './small-graphs.ts';

const plan = (short: Short, target: string, more: Parameters<typeof facts>[0] = {}) =>
  planRemoval(graphFrom(short), target, facts(more));
const ids = (planned: ReturnType<typeof plan>): string[] =>
  (planned.best?.steps ?? []).map((s) => s.id);

/** What each thing waits for, as edges of the library's graph; parts here have nothing below them. */
function waits({ nodes, joints, blocks }: GraphInput): DirectedGraph {
  const graph = new DirectedGraph();
  for (const { id } of [...nodes, ...joints]) graph.addNode(id);
  const wait = (id: string, before: string): void => {
    if (id !== before && !graph.hasEdge(id, before)) graph.addEdge(id, before);
  };
  for (const { id, from, to } of joints)
    for (const [side, other] of [
      [from, to],
      [to, from],
    ])
      for (const end of side ?? []) if (!other?.includes(end)) wait(end, id);
  for (const { first, after } of blocks) wait(after, first);
  return graph;
}

function reached(graph: DirectedGraph, start: string): string[] {
  const seen = new Set([start]);
  for (const id of seen) for (const next of graph.outNeighbors(id)) seen.add(next);
  return [...seen].sort();
}

describe('on random graphs', () => {
  const seeds = Array.from({ length: 60 }, (_, i) => i + 1);

  it.each(seeds)(
    '%d: the steps are those that the library reaches, in an order it allows',
    (seed) => {
      const input = randomGraph(seed, 5 + (seed % 20));
      const reference = waits(input);
      const planned = planRemoval(new RemovalGraph(input), 'P0', facts());
      const steps = planned.best?.steps ?? [];
      const needed = reached(reference, 'P0');
      expect(steps.map((s) => s.id).sort()).toEqual(needed);
      const among = reference.copy();
      for (const id of reference.nodes()) if (!needed.includes(id)) among.dropNode(id);
      const circles = planned.best?.circles ?? [];
      expect(circles.length > 0).toBe(hasCycle(among));
      if (circles.length > 0) return;
      const at = new Map(steps.map((s, i) => [s.id, i]));
      among.forEachDirectedEdge((_edge, _attributes, id, before) =>
        expect(at.get(before)).toBeLessThan(at.get(id) ?? -1),
      );
    },
  );

  it.each(seeds)('%d: each ring is one, each of it waiting for the next', (seed) => {
    const input = randomGraph(seed, 30);
    const reference = waits(input);
    for (const circle of allCircles(new RemovalGraph(input), facts()))
      for (const [i, id] of circle.entries())
        expect(reference.hasEdge(id, circle[(i + 1) % circle.length] ?? '')).toBe(true);
  });
});

describe('alternatives', () => {
  const short: Short = {
    parts: 'A B C D',
    joints: ['J1:A-B', 'J2:C-B', 'J3:D-B', 'J4:B-A'],
    blocks: ['C>A|either', 'D>A|either', 'J2>J1|tool', 'J3>J1|tool'],
  };

  it.each([
    [{ J2: 5, J3: 9 }, ['J2', 'J1', 'J4', 'C', 'A']],
    [{ J2: 9, J3: 5 }, ['J3', 'J1', 'J4', 'D', 'A']],
  ])('are chosen by what they add: %j', (seconds, expected) => {
    expect(ids(plan(short, 'A', { seconds })).sort()).toEqual([...expected].sort());
  });

  it('go round what is locked, and there is no way when each is', () => {
    const seconds = { J2: 5, J3: 9 };
    expect(ids(plan(short, 'A', { seconds, locked: 'J2' }))).toContain('J3');
    const stuck = plan({ ...short, stays: 'B' }, 'A', { seconds, locked: 'J2 J3' });
    expect(stuck.best).toBeUndefined();
    expect(stuck.dead?.why).toBe('no alternative');
  });

  it('cost the least of all choices, tried one by one', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const cost = (i: number): number => 1 + ((seed * (i + 3) * 7919) % 23);
      const seconds = Object.fromEntries(Array.from({ length: 8 }, (_, i) => [`S${i}`, cost(i)]));
      const steps = 'S0 S1 S2 S3 S4 S5 S6 S7';
      const blocks = ['S0>A|x', 'S1>A|x', 'S2>A|x', 'S3>S0', 'S4>S1', 'S5>S2', 'S6>S4', 'S7>S5'];
      const found = plan({ parts: 'A', steps, blocks }, 'A', { seconds }).best?.seconds;
      const chains = [
        [0, 3],
        [1, 4, 6],
        [2, 5, 7],
      ].map((chain) => chain.reduce((sum, i) => sum + cost(i), 0));
      expect(found).toBe(Math.min(...chains));
    }
  });

  it('that wait for what they are wanted for are none', () => {
    const ring: Short = { parts: 'A', steps: 'S1 S2', blocks: ['S1>A|x', 'S2>A|x', 'A>S1'] };
    expect(ids(plan(ring, 'A', { seconds: { S1: 1, S2: 50 } }))).toEqual(['S2', 'A']);
  });
});

describe('rings', () => {
  it('are found, walked once, and everything else still has its order', () => {
    const short: Short = {
      parts: 'A B',
      joints: ['J1:A-B'],
      steps: 'S1 S2 S3',
      blocks: ['S1>J1', 'S2>S1', 'S3>S2', 'S1>S3'],
    };
    const planned = plan(short, 'A');
    expect(planned.best?.circles).toEqual([['S1', 'S2', 'S3']]);
    expect(ids(planned).sort()).toEqual(['A', 'J1', 'S1', 'S2', 'S3']);
    expect(allCircles(graphFrom(short), facts())).toEqual([['S1', 'S2', 'S3']]);
  });
});

describe('what is locked', () => {
  const short: Short = {
    parts: 'base A B C',
    joints: ['J1:A-base', 'J2:A-B', 'J3:B-C', 'J4:C-base'],
    stays: 'base',
  };

  it('to a neighbour makes it come along, and its own joints are opened instead', () => {
    const planned = plan(short, 'A', { locked: 'J2' });
    expect(ids(planned)).toEqual(['J1', 'J3', 'A']);
    expect(planned.best?.along).toEqual(['B']);
    expect(planned.best?.loose).toEqual([]);
  });

  it('to what stays leaves no way', () => {
    expect(plan(short, 'A', { locked: 'J1' })).toMatchObject({ dead: { at: 'J1', why: 'locked' } });
    expect(plan(short, 'A', { locked: 'J2 J3 J4' })).toMatchObject({ dead: { at: 'J4' } });
    expect(plan(short, 'base')).toMatchObject({ dead: { at: 'base', why: 'stays' } });
  });

  it('to something that nothing else holds is doubted', () => {
    const planned = plan(
      { parts: 'base A B', joints: ['J1:A-base', 'J2:A-B'], stays: 'base' },
      'A',
      {
        locked: 'J2',
      },
    );
    expect(planned.best?.loose).toEqual(['B']);
  });

  it('and joints that opening destroys make things come off as one, unless that would be the base', () => {
    expect(plan(short, 'A', { cut: 'J2' }).best?.along).toEqual(['B']);
    expect(ids(plan(short, 'A', { cut: 'J1 J2' }))).toEqual(['J1', 'J3', 'A']);
  });

  it('without a word on what stays takes along only what is in the same assembly', () => {
    const { stays: _stays, ...free } = short;
    const below = { ...free, parts: 'base X A B C', below: 'A<X B<X' };
    expect(plan(below, 'A', { locked: 'J2' }).best?.along).toEqual(['B']);
    expect(plan(below, 'A', { locked: 'J1' }).dead).toMatchObject({ at: 'J1' });
  });
});

describe('parts of an assembly', () => {
  const short: Short = {
    parts: 'base X A cover',
    below: 'A<X',
    joints: ['J1:X-base', 'J2:A-X', 'J3:cover-base'],
    blocks: ['cover>J2'],
    stays: 'base',
  };

  it('are reached where they stand, or with the assembly off first, whichever is quicker', () => {
    const inPlace = plan(short, 'A', { seconds: { J1: 90, J3: 5 } });
    expect(ids(inPlace)).toEqual(['J3', 'cover', 'J2', 'A']);
    expect(inPlace.others.map((p) => [p.offFirst, p.seconds])).toEqual([['X', 91]]);
    const offFirst = plan(short, 'A', { seconds: { J1: 4, J3: 50 } });
    expect(offFirst.best?.offFirst).toBe('X');
    // The cover is not in the way any more: J2 goes from the assembly to its part.
    expect(ids(offFirst)).toEqual(['J1', 'X', 'J2', 'A']);
  });

  it('come off with their assembly, whose inner joints stay closed', () => {
    expect(ids(plan(short, 'X'))).toEqual(['J1', 'X']);
  });
});

describe('groups of joints', () => {
  it('that hold several parts alike are opened by the share on what comes off', () => {
    const short: Short = { parts: 'L R base', joints: ['J1:L+R-base'], stays: 'base' };
    const share = (target: string) => plan(short, target).best?.steps[0]?.share;
    expect(share('L')).toBe(0.5);
    const both: Short = { ...short, blocks: ['R>L'] };
    expect(plan(both, 'L').best?.steps.find((s) => s.id === 'J1')?.share).toBe(1);
    const inTheWay: Short = { ...short, parts: 'L R base Z', blocks: ['J1>Z'] };
    expect(plan(inTheWay, 'Z').best?.steps[0]?.share).toBe(1);
  });
});

describe('groups that list as many ends on both sides', () => {
  const short: Short = {
    parts: 'L R X Y base',
    joints: ['J1:L+R-X+Y', 'J2:X+Y-base'],
    stays: 'base',
  };

  it('hold them in pairs: what is locked brings its own partner along', () => {
    const planned = plan(short, 'L', { locked: 'J1' });
    expect(planned.best?.along).toEqual(['X']);
    expect(ids(planned)).toEqual(['J2', 'L']);
  });
});

it('keeps one tool in hand as long as something is ready for it', () => {
  const short: Short = { parts: 'A base', joints: ['J1:A-base', 'J2:A-base', 'J3:A-base'] };
  const tools = { J1: 'socket', J2: 'bit', J3: 'socket' };
  expect(ids(plan(short, 'A', { tools }))).toEqual(['J1', 'J3', 'J2', 'A']);
});
