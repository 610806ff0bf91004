/**
 * Megson, Aircraft Structures for Engineering Students, 4th edition, example 23.2, p. 612: three
 * closed cells with walls of unequal shear modulus under a torque (question cell-torsion).
 * Inputs, shear flows 7.1, 8.9, 4.2 N/mm and twist 7.36e-7 rad/mm seen; further digits recomputed.
 */
import { describe, expect, it } from 'vitest';
import { asked, codes, detailRow, off } from '../engine/structure/asked.ts';

type Wall = readonly [name: string, cell: string, other: string, l: number, t: number, g: number];
const WALLS: readonly Wall[] = [
  ['12 outer', 'I', 'outside', 1650, 1.22, 24200],
  ['12 inner', 'I', 'II', 508, 2.03, 27600],
  ['13', 'II', 'outside', 775, 1.22, 24200],
  ['24', 'II', 'outside', 775, 1.22, 24200],
  ['34', 'II', 'III', 380, 1.63, 27600],
  ['35', 'III', 'outside', 508, 0.92, 20700],
  ['46', 'III', 'outside', 508, 0.92, 20700],
  ['56', 'III', 'outside', 254, 0.92, 20700],
];
const CELLS = { I: 258_000, II: 355_000, III: 161_000 };

const torsion = (walls: readonly Wall[]) =>
  asked('cell-torsion', {
    torque: 'exactly 11.3 kN.m',
    cells: Object.entries(CELLS).map(([cell, a]) => ({ cell, area: `exactly ${a} mm2` })),
    walls: walls.map(([wall, cell, other, length, t, g]) => ({
      ...{ wall, cell, other, length: `exactly ${length} mm` },
      ...{ thickness: `exactly ${t} mm`, shear: `exactly ${g} MPa` },
    })),
  });

describe('example 23.2', async () => {
  const answer = await torsion(WALLS);
  /** Shear flow of a wall, N/mm, and stress, MPa. */
  const flow = (wall: string) => Number(detailRow(answer, wall)[1]) / 1e3;
  const stress = (wall: string) => Number(detailRow(answer, wall)[2]) / 1e6;

  it.each([
    ['12 outer', 7.086],
    ['13', 8.882],
    ['35', 4.153],
  ])('flow in wall %s is %f N/mm', (wall, q) => {
    expect(off(flow(wall), q)).toBeLessThan(5e-3);
  });

  it('twists by 7.360e-7 rad/mm', () => {
    expect(off((answer.outs.twist?.x ?? 0) / 1e3, 7.36e-7)).toBeLessThan(5e-3);
  });

  it.each([
    ['12 outer', 5.81],
    ['12 inner', 0.88],
    ['13', 7.28],
    ['34', 2.9],
    ['35', 4.51],
  ])('stress in wall %s is %f MPa', (wall, tau) => {
    expect(off(stress(wall), tau)).toBeLessThan(7e-3);
  });

  it('names the largest stress and the form', () => {
    expect(off((answer.outs.stress?.x ?? 0) / 1e6, 7.28)).toBeLessThan(5e-3);
    expect(answer.detail?.title).toContain('Bredt and Batho');
  });
});

it('a cell with a wall left out can not close around its area, and is refused', async () => {
  const answer = await torsion(WALLS.filter(([name]) => name !== '12 outer'));
  expect(answer.outs).toEqual({});
  expect(codes(answer)).toContain('section-is-open');
  expect(answer.findings.map((f) => f.what).join()).toMatch(/walls of cell I are 508 mm long/);
});
