import { describe, expect, it } from 'vitest';
import { decideDifference, decideMargin } from '../../src/engine/index.ts';

/** t_p(ν) for p = 95.45 % and 68.27 %, JCGM 100:2008, Table G.2 (from memory, recomputed). */
const T = { 2: [4.53, 1.32], 5: [2.65, 1.11], 16: [2.17, 1.03] } as const;
const JUST = 1e-9;

describe('word for a difference', () => {
  it.each([
    [2 + JUST, 'different'],
    [2, 'indicated'],
    [-2 - JUST, 'different'],
    [1, 'indicated'],
    [-1, 'indicated'],
    [1 - JUST, 'not distinguishable'],
    [0, 'not distinguishable'],
  ])('of %f u is "%s"', (d, word) => {
    expect(decideDifference(d, 1, null)).toMatchObject({ word, d, u: 1, dof: null });
  });

  it('without any spread is different, unless there is no difference', () => {
    expect(decideDifference(1e-9, 0, null).word).toBe('different');
    expect(decideDifference(0, 0, null).word).toBe('not distinguishable');
  });

  it.each(Object.entries(T))('goes by Student’s t at %s degrees of freedom', (dof, [two, one]) => {
    const word = (d: number) => decideDifference(d, 1, Number(dof)).word;
    expect(word(two + 0.006)).toBe('different');
    expect(word(two - 0.006)).toBe('indicated');
    expect(word(one + 0.006)).toBe('indicated');
    expect(word(one - 0.006)).toBe('not distinguishable');
  });

  it('says by which rule', () => {
    expect(decideDifference(1, 1, null).rule).toBe(
      'different beyond 2 u, indicated from 1 u, else not distinguishable',
    );
    expect(decideDifference(1, 1, 5).rule).toContain('beyond 2.65 u, indicated from 1.11 u');
  });
});

describe('word for a margin', () => {
  it.each([
    [2 + JUST, 'holds'],
    [2, 'not proven'],
    [0, 'not proven'],
    [-2, 'not proven'],
    [-2 - JUST, 'fails'],
  ])('of %f u is "%s"', (d, word) => {
    expect(decideMargin(d, 1, null).word).toBe(word);
  });

  it('between exact numbers holds from zero on', () => {
    expect([1, 0, -1].map((d) => decideMargin(d, 0, null).word)).toEqual([
      'holds',
      'holds',
      'fails',
    ]);
  });

  it.each(Object.entries(T))('goes by Student’s t at %s degrees of freedom', (dof, [two]) => {
    expect(decideMargin(two + 0.006, 1, Number(dof)).word).toBe('holds');
    expect(decideMargin(two - 0.006, 1, Number(dof)).word).toBe('not proven');
    expect(decideMargin(-two - 0.006, 1, Number(dof)).word).toBe('fails');
  });
});
