/**
 * Kaw, Mechanics of Composite Materials, 2nd edition, examples 3.3 to 3.8: glass and epoxy with
 * 70 % fibre by volume, rule of mixtures and Halpin–Tsai (question fibre-mixture). From memory,
 * recomputed.
 */
import { describe, expect, it } from 'vitest';
import { halpinTsai, parallel, series } from '../../src/engine/structure/fibre-mixture.ts';
import { asked, off, shown } from '../engine/structure/asked.ts';

const GLASS_EPOXY = {
  ...{ share: 'exactly 70 %', e1f: 'exactly 85 GPa', e2f: 'exactly 85 GPa' },
  ...{ g12f: 'exactly 35.42 GPa', nuf: 'exactly 0.2', em: 'exactly 3.4 GPa', num: 'exactly 0.3' },
  ...{ rhof: 'exactly 2500 kg/m3', rhom: 'exactly 1200 kg/m3' },
};

describe('glass and epoxy, 70 % fibre', async () => {
  const answer = await asked('fibre-mixture', GLASS_EPOXY);
  it.each([
    ['e1', 60.52],
    ['e2series', 10.37],
    ['e2', 20.2],
    ['nu12', 0.23],
    ['g12series', 4.014],
    ['g12', 6.169],
    ['density', 2110],
  ])('%s is %f', (name, x) => {
    expect(off(shown(answer, name), x)).toBeLessThan(6e-4);
  });
});

describe('Halpin–Tsai', () => {
  it('is the inverse rule of mixtures for ξ = 0 and the rule of mixtures for ξ without end', () => {
    for (const v of [0, 0.2, 0.5, 0.7, 0.9]) {
      expect(off(halpinTsai(85, 3.4, v, 0), series(85, 3.4, v))).toBeLessThan(1e-12);
      expect(off(halpinTsai(85, 3.4, v, 1e9), parallel(85, 3.4, v))).toBeLessThan(1e-6);
    }
  });
});

it('a share of fibre above the closest packing of round fibres is refused', async () => {
  await expect(asked('fibre-mixture', { ...GLASS_EPOXY, share: 'exactly 95 %' })).rejects.toThrow(
    /share of fibre by volume must be below 90.7/,
  );
});
