import { describe, expect, it } from 'vitest';
import { asked } from './asked.ts';

const CARBON = {
  ...{ material: 'carbon', e1: 'exactly 135 GPa', e2: 'exactly 9 GPa' },
  ...{ g12: 'exactly 5 GPa', nu12: 'exactly 0.3' },
};
const PLY = { material: 'carbon', angle: 'exactly 0 °', thickness: 'exactly 0.25 mm' };
const laminate = (inputs: {
  order?: string;
  materials?: readonly Record<string, string>[];
  plies?: readonly Record<string, string>[];
}) =>
  asked('laminate-stiffness', {
    order: 'first ply at the top (+z)',
    materials: [CARBON],
    plies: [PLY],
    ...inputs,
  });
const reasons = async (answer: ReturnType<typeof laminate>) => {
  expect((await answer).outs).toEqual({});
  return (await answer).findings.map((f) => f.what).join('; ');
};

describe('a laminate is refused with a reason', () => {
  it('with a ply of no thickness', async () => {
    await expect(laminate({ plies: [{ ...PLY, thickness: 'exactly 0 mm' }] })).rejects.toThrow(
      /thickness of the ply must be above 0 mm/,
    );
  });

  it('when nobody says where the first ply lies: the sign of B hangs on it', async () => {
    expect(await reasons(laminate({ order: '' }))).toContain('sign of B');
  });

  it('with a Poisson ratio that no orthotropic ply can have', async () => {
    const materials = [{ ...CARBON, nu12: 'exactly 3.9' }];
    expect(await reasons(laminate({ materials }))).toMatch(/below √\(E₁\/E₂\) = 3.873/);
    const fine = [{ ...CARBON, nu12: 'exactly 0.6' }];
    expect((await laminate({ materials: fine })).outs.A11).toBeDefined();
  });

  it('with a Poisson ratio of 0.6 in an isotropic ply', async () => {
    const steel = { ...CARBON, e1: 'exactly 210 GPa', e2: 'exactly 210 GPa', nu12: 'exactly 0.6' };
    const materials = [{ ...steel, g12: `exactly ${210 / 3.2} GPa` }];
    expect(await reasons(laminate({ materials }))).toContain('below 0.5');
  });

  it('with a ply of a material that is not listed, or without plies', async () => {
    expect(await reasons(laminate({ plies: [{ ...PLY, material: 'glass' }] }))).toContain(
      'not listed',
    );
    expect(await reasons(laminate({ plies: [] }))).toContain('no plies');
  });

  it('a single ply asked at an angle, too', async () => {
    const { material: _m, ...ply } = CARBON;
    const answer = await asked('ply-stiffness', {
      ...ply,
      nu12: 'exactly 4',
      angle: 'exactly 10 °',
    });
    expect(answer.outs).toEqual({});
    expect(answer.findings.map((f) => f.code)).toContain('no-such-ply');
  });
});

describe('strains of a laminate', () => {
  const limits = { t1: 'exactly 1 %', c1: 'exactly 0.8 %', t2: 'exactly 0.5 %' };
  const more = { c2: 'exactly 2 %', s12: 'exactly 1.5 %' };
  const strained = (loads: Record<string, string>, angles: readonly number[]) =>
    asked('laminate-strain', {
      ...loads,
      order: 'first ply at the bottom (-z)',
      materials: [{ ...CARBON, ...limits, ...more }],
      plies: angles.map((a) => ({ ...PLY, angle: `exactly ${a} °` })),
    });

  it('of one ply pulled along its fibre are N / E t, and give way at the strain it bears', async () => {
    const answer = await strained({ nx: 'exactly 100 N/mm' }, [0]);
    const strain = 100 / 0.25 / 135e3;
    expect(answer.outs.ex?.x).toBeCloseTo(strain, 12);
    expect(answer.outs.ey?.x).toBeCloseTo(-0.3 * strain, 12);
    expect(answer.outs.factor?.x).toBeCloseTo(0.01 / strain, 9);
  });

  it('a plus of Mx stretches the top: the limit in compression binds at the bottom', async () => {
    const answer = await strained({ mx: 'exactly 1 N' }, [0]);
    const curvature = 1 / ((135e9 * 0.25e-3 ** 3) / 12);
    expect(answer.outs.kx?.x).toBeCloseTo(curvature, 6);
    const [top, bottom] = answer.detail?.rows ?? [];
    expect([top?.[1], bottom?.[1]]).toEqual(['top', 'bottom']);
    expect(Number(top?.[2])).toBeCloseTo((curvature * 0.25e-3) / 2, 9);
    expect(Number(bottom?.[2])).toBeCloseTo((-curvature * 0.25e-3) / 2, 9);
    expect(answer.outs.factor?.x).toBeCloseTo(0.008 / ((curvature * 0.25e-3) / 2), 6);
  });

  it('in [0/90/0] pulled along x it is the ply across that gives way', async () => {
    const answer = await strained({ nx: 'exactly 100 N/mm' }, [0, 90, 0]);
    const shares = (answer.detail?.rows ?? []).map(
      (r) => [r[0], Math.max(...r.slice(5).map(Number))] as const,
    );
    const worst = shares.reduce((a, b) => (b[1] > a[1] ? b : a));
    expect(worst[0]).toBe('2');
    expect(answer.outs.factor?.x).toBeCloseTo(1 / worst[1], 9);
  });
});
