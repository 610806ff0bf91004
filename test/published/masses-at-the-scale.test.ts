/**
 * EN 1993-1-1:2005, 3.2.6: structural steel 7850 kg/m³; water 998.2 kg/m³ at 20 °C (handbook
 * value): from memory, recomputed. Masses to be expected at the scale (questions expected-mass,
 * fastener-count, fluid-balance), own inputs: volume times density, proportion of masses.
 */
import { describe, expect, it } from 'vitest';
import { askStudy, askWritten, loadQuestion } from '../../src/engine/index.ts';
import { boltMass } from '../../src/engine/mass/faults/fasteners.ts';
import type { Entry } from '../../src/study/index.ts';
import { askRegistered, out } from '../engine/made-question.ts';
import { count, mass, node, point, read, scalar, studyOf, text } from '../study/made-study.ts';

const { question: expected } = await loadQuestion('expected-mass');
const { question: counted } = await loadQuestion('fastener-count');
const { question: fluids } = await loadQuestion('fluid-balance');

const STEEL = '7850 ± 20 kg/m3';

describe('mass by volume and density', () => {
  it('of a cube of steel, 100 mm a side, is 7.85 kg', () => {
    const answer = askWritten(expected, {
      ...{ mass: '7.86 ± 0.01 kg', pieces: '1', volume: '1000 ± 1 cm3', density: STEEL },
    });
    expect(out(answer, 'bySolid').x).toBeCloseTo(7.85, 9);
    expect(out(answer, 'offSolid').x).toBeCloseTo(0.01, 9);
    expect(answer.findings.map((f) => f.code)).not.toContain('mass-not-expected');
  });

  it('of a plate 1 m × 1 m × 1 mm is 7.85 kg, within the spread of formed sheet', () => {
    const answer = askWritten(expected, {
      ...{ mass: '7.9 ± 0.01 kg', pieces: '1', density: STEEL, thickness: 'exactly 1 mm' },
      face: 'exactly 10000 cm2',
    });
    expect(out(answer, 'bySheet').x).toBeCloseTo(7.85, 9);
    expect(Number(out(answer, 'bySheet').u)).toBeCloseTo(7.85 * 0.3, 1);
  });

  it.each([
    ['pounds', '17.31 ± 0.01 kg', true],
    ['a decimal shifted', '78.5 ± 0.01 kg', true],
    ['as it is', '7.86 ± 0.01 kg', false],
    ['a hair off, within 4 u', '7.91 ± 0.01 kg', false],
  ])('warns beyond 4 u of a mass written %s', (_, written, warns) => {
    const { findings } = askWritten(expected, {
      ...{ mass: written, pieces: '1', volume: '1000 ± 1 cm3', density: STEEL },
    });
    const codes = findings.map((f) => f.code);
    expect(codes.includes('mass-not-expected')).toBe(warns);
  });

  it('of bolts by thread and length is that of their parts: M12 × 90, shank 79.9 g', () => {
    const shank = 7850 * (Math.PI / 4) * 0.012 ** 2 * 0.09;
    expect(shank * 1000).toBeCloseTo(79.9, 1);
    const bolts = boltMass('Pack to body bolt M12x90', 18) ?? Number.NaN;
    expect(bolts).toBeGreaterThan(18 * shank);
    expect(bolts).toBeLessThan(18 * 1.6 * shank);
    expect(boltMass('Wheel bolt M14x1.5', 20)).toBeUndefined();
    expect(boltMass('Screws M8x30 and M8x80', 20)).toBeUndefined();
  });
});

describe('mass to be expected in a study', () => {
  const at = (id: string, kg: number, y: number): Entry[] => [
    node(id, 'van', 'part'),
    { v: 1, e: 'node.name', id, name: `Spring link ${y < 0 ? 'LH' : 'RH'}` },
    read(id, 'mass', mass(kg, 0.01)),
    read(id, 'position', point([2.9, y, 0.2], 0.005)),
  ];
  const view = studyOf(
    ...at('p1', 4.12, -0.5),
    ...at('p2', 5.02, 0.5),
    read('p2', 'material', text('steel')),
    read('p2', 'volume', scalar('volume', 522e-6, 2e-6)),
    node('m1', 'van', 'trial'),
    read('m1', 'moduleMass', mass(8.2, 0.05)),
    ...['p1', 'p2'].map(
      (to, i): Entry => ({
        ...{ v: 1, e: 'link.add' },
        link: { id: `l${i}`, kind: 'weighed-with', from: 'm1', to },
      }),
    ),
  );

  it('comes from the other side, the material and the module, and warns by each', async () => {
    const answer = await askRegistered('expected-mass', view, 'p2');
    expect(out(answer, 'bySide').x).toBeCloseTo(4.12, 9);
    expect(out(answer, 'bySolid').x).toBeCloseTo(522e-6 * 7850, 6);
    expect(out(answer, 'byRemainder').x).toBeCloseTo(8.2 - 4.12, 9);
    expect(answer.findings.filter((f) => f.code === 'mass-not-expected')).toHaveLength(3);
  });

  it('is compared with what is typed, not with what stands there', async () => {
    const { question, questions } = await loadQuestion('expected-mass');
    const typed = { view, subject: 'p2', over: { mass: '4.10 ± 0.01 kg' } };
    const answer = askStudy(question, questions, typed);
    expect(out(answer, 'offSide').x).toBeCloseTo(-0.02, 9);
    expect(answer.findings.map((f) => f.code)).not.toContain('mass-not-expected');
  });
});

describe('fasteners by weight', () => {
  const bag = { total: '640 ± 1 g', tare: '20 ± 0.5 g', pieces: '20', sample: '200 ± 0.5 g' };

  it('are the mass over that of one piece', () => {
    const answer = askWritten(counted, { ...bag, scatter: 'exactly 0' });
    expect(out(answer, 'count').x).toBeCloseTo(62, 9);
    const u = 62 * Math.hypot(Math.hypot(1, 0.5) / 620, 0.5 / 200);
    expect(out(answer, 'count').u).toBeCloseTo(u, 6);
    expect(answer.detail?.rows).toEqual([[62, expect.closeTo(1, 3)]]);
    expect(answer.findings.map((f) => f.code)).not.toContain('count-ambiguous');
  });

  it('are ambiguous, and say so, where a small sample on a coarse scale is all there is', () => {
    const answer = askWritten(counted, { ...bag, pieces: '5', sample: '50 ± 1 g' });
    expect(answer.findings.map((f) => f.code)).toContain('count-ambiguous');
    const shares = answer.detail?.rows.map((r) => Number(r[1])) ?? [];
    expect(shares.length).toBeGreaterThan(2);
    expect(answer.detail?.rows[0]?.[0]).toBe(62);
    expect(shares.reduce((a, b) => a + b, 0)).toBeGreaterThan(0.9);
  });

  it('scatter from piece to piece: the spread of the count holds both sample and bag', () => {
    const exact = { total: 'exactly 1000 g', tare: 'exactly 0 g', sample: 'exactly 100 g' };
    const answer = askWritten(counted, { ...exact, pieces: '10', scatter: '0 ± 0.02' });
    const u = 100 * 0.02 * Math.sqrt(1 / 10 + 1 / 100);
    expect(out(answer, 'count').u).toBeCloseTo(u, 6);
  });
});

describe('fluids', () => {
  const water = (kg: string) => ({
    ...{ mass: kg, volume: 'exactly 10 L', density: '998.2 ± 0.5 kg/m3' },
  });

  it('of which all was recovered leave nothing', () => {
    const answer = askWritten(fluids, { fluids: [water('9.982 ± 0.005 kg')] });
    expect(out(answer, 'left').x).toBeCloseTo(0, 9);
    expect(out(answer, 'left').decision?.word).toBe('not distinguishable');
  });

  it('recovered in part are told fluid by fluid; one not weighed yet is missing, not left', () => {
    const answer = askWritten(fluids, { fluids: [water('9.5 ± 0.005 kg'), water('')] });
    expect(answer.detail?.rows.map((r) => r.at(-1))).toEqual(['different', 'incomplete']);
    expect(answer.detail?.rows[0]?.[3]).toBeCloseTo(0.482, 6);
    expect(out(answer, 'left').u).toBe('incomplete');
  });
});

it('a part of a study that was counted by weight', async () => {
  const view = studyOf(
    node('p1', 'van'),
    read('p1', 'mass', mass(0.64, 0.002)),
    read('p1', 'sampleCount', count(20)),
    read('p1', 'sampleMass', mass(0.206, 0.0005)),
  );
  const answer = await askRegistered('fastener-count', view, 'p1');
  expect(out(answer, 'count').x).toBeCloseTo((0.64 * 20) / 0.206, 9);
});
