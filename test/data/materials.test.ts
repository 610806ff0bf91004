import { describe, expect, it } from 'vitest';
import {
  MATERIALS,
  type Material,
  type MaterialProperty,
  materialOf,
} from '../../src/data/index.ts';
import { checkSpread } from '../../src/quantity/index.ts';

/** Plausible limits of each property, SI: a slip of a power of ten is outside. */
const LIMITS: Readonly<Record<MaterialProperty, readonly [number, number]>> = {
  modulus: [1e9, 450e9],
  poisson: [0.1, 0.49],
  density: [800, 9500],
  yield: [20e6, 2e9],
  strength: [30e6, 2.5e9],
  expansion: [1e-6, 200e-6],
  conductivity: [0.1, 420],
};

describe('materials', () => {
  const values = MATERIALS.flatMap((m) =>
    (Object.keys(LIMITS) as MaterialProperty[]).flatMap((p) => {
      const value = m[p];
      return value ? [[m.id, p, value] as const] : [];
    }),
  );

  it.each(values)('%s, %s: source, spread, size', (_id, property, value) => {
    const [low, high] = LIMITS[property];
    expect(value.source.length).toBeGreaterThan(8);
    expect(checkSpread(value.spread, value.x)).toBeUndefined();
    expect(value.x).toBeGreaterThan(low);
    expect(value.x).toBeLessThan(high);
    expect(value.status === 'common practice, no source').toBe(value.source.startsWith('common'));
  });

  it('have ids of their own, and yield below their strength', () => {
    expect(new Set(MATERIALS.map((m) => m.id)).size).toBe(MATERIALS.length);
    const wrong = MATERIALS.filter((m) => m.yield && m.strength && m.yield.x >= m.strength.x);
    expect(wrong.map((m) => m.id)).toEqual([]);
  });

  it('of EN 1993-1-1 and EN 1999-1-1 are the design constants (seen)', () => {
    expect(materialOf('steel')?.modulus.x).toBe(210e9);
    expect(materialOf('aluminium')?.modulus.x).toBe(70e9);
    expect(materialOf('aluminium')?.density.x).toBe(2700);
  });
});

describe('a part’s material finds its row', () => {
  it.each([
    ['dual-phase steel 600', 'steel-hct590x'],
    ['Dual-phase steel 780', 'steel'],
    ['Al 6082-T6', 'aluminium-6082-t6'],
    ['Al 6005A-T6', 'aluminium'],
    ['Al', 'aluminium'],
    ['stainless steel', 'stainless-steel'],
    ['SMC glass 30 / UP', 'smc-glass-30'],
    ['grey iron', 'grey-iron-250'],
  ])('%s is %s', (text, id) => {
    expect(materialOf(text)?.id).toBe(id);
  });

  it.each(['steel/PA', 'rubber/steel', 'Al 1060 / Cu', 'mineral wool', 'talc', ''])(
    '"%s" has none: it names several materials, or none known',
    (text) => expect(materialOf(text)).toBeUndefined(),
  );

  it('the shop’s own stands before a published one of the same words', () => {
    const steel = MATERIALS.find((m) => m.id === 'steel') as Material;
    const own: Material = { ...steel, id: 'our-steel', words: 'steel as we test it' };
    expect(materialOf('steel tube', [own, ...MATERIALS])?.id).toBe('our-steel');
  });
});
