/**
 * EN 10365:2017 (formerly Euronorm 19-57), Hot rolled steel channels, I and H sections: sizes
 * from the standard, properties from producers' tables of these sections (question i-section).
 * A, Iy, Wel,y and Wpl,y of IPE 80 and IPE 200 and all of IPE 80 seen and recomputed; Iz, It, Iw
 * of IPE 200 from memory, recomputed. Printed slips of such tables are kept as negative cases.
 */
import { describe, expect, it } from 'vitest';
import { asked, detailRow, exactly, off, shown } from '../engine/structure/asked.ts';

/** Depth, width, web, flange and fillet, mm. */
const section = ([h = 0, b = 0, tw = 0, tf = 0, r = 0]: readonly number[]) =>
  asked('i-section', { ...exactly({ h, b, tw, tf, r }, 'mm'), density: 'exactly 7850 kg/m3' });

describe.each([
  [
    'IPE 80',
    [80, 46, 3.8, 5.2, 5],
    { area: 7.643, Iy: 80.14, Wely: 20.03, Wply: 23.22, Iz: 8.489, Wplz: 5.818, lineMass: 6.0 },
    { It: 0.698, Iw: 118 },
  ],
  [
    'IPE 200',
    [200, 100, 5.6, 8.5, 12],
    {
      ...{ area: 28.484, Iy: 1943.2, Wely: 194.32, Wply: 220.64, Iz: 142.37, Wplz: 44.61 },
      lineMass: 22.36,
    },
    { It: 6.98, Iw: 12990 },
  ],
] as const)('%s', async (_name, sizes, withinATenth, withinOne) => {
  const answer = await section(sizes);

  it.each(Object.entries(withinATenth))('has %s = %f within 0.1 %%', (name, expected) => {
    expect(off(shown(answer, name), expected)).toBeLessThan(1e-3);
  });

  it.each(Object.entries(withinOne))('has %s = %f within 1 %%', (name, expected) => {
    expect(off(shown(answer, name), expected)).toBeLessThan(1e-2);
  });
});

describe('the torsion constant of IPE 200', async () => {
  const answer = await section([200, 100, 5.6, 8.5, 12]);

  it('says that it is the form with root fillets', () => {
    expect(detailRow(answer, 'torsion')[1]).toContain('root fillets');
  });

  it('by thin strips alone is 25 % low, and stands beside it under that name', () => {
    // Strips to the middle of the flanges; counted between the flanges they give 5.165 cm⁴.
    const strips = answer.outs.ItStrips;
    expect(strips?.meaning).toContain('thin strips');
    expect(off((strips?.x ?? 0) * 1e8, 5.165)).toBeLessThan(0.011);
    expect(shown(answer, 'ItStrips') / shown(answer, 'It')).toBeLessThan(0.76);
  });
});

describe('slips printed in tables', () => {
  it.each([
    ['IPE 180', [180, 91, 5.3, 8, 9], 'Wply', 166.4, 161],
    ['IPE 240', [240, 120, 6.2, 9.8, 15], 'Wply', 366.6, 368],
    ['IPE 180', [180, 91, 5.3, 8, 9], 'Wely', 146.3, 143.6],
  ] as const)('%s %j: %s is %f, not %f', async (_name, sizes, name, truly, printed) => {
    const x = shown(await section(sizes), name);
    expect(off(x, truly)).toBeLessThan(1e-3);
    expect(off(x, printed)).toBeGreaterThan(3e-3);
  });
});
