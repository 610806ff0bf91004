import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CommandLine } from './run.ts';

let line: CommandLine;

const PARTS = `number,name,mass kg,u mass kg,scale
P1,front frame,12.0,0.1,scale A
P2,rear frame,11.0,0.1,scale A
P3,bracket,0.5,,scale A
`;

beforeAll(async () => {
  line = await CommandLine.open();
  for (const [study, parts] of [
    ['one', PARTS],
    ['other', PARTS.replace('12.0', '14.5')],
  ] as const) {
    const dir = join(line.dir, study);
    await mkdir(dir);
    await writeFile(join(dir, 'parts.csv'), parts);
    const { code, err } = await line.run('import', dir, '--study', study, '--new');
    if (code !== 0) throw new Error(err);
  }
});
afterAll(() => line.close());

describe('hoistside compare', () => {
  it('prints both sides, the difference with its sign, spread and word, and the rule', async () => {
    const args = ['mass-roll-up', '--study', 'one', '--subject', 'P1', '--output', 'mass'];
    const { code, out } = await line.run('compare', ...args, '--with', 'P2');
    expect(code).toBe(0);
    expect(out).toContain('these specimens');
    expect(out).toMatch(/difference\s+\+1\.00 ± 0\.14 kg: different, heavier/);
    expect(out).toContain('Rule: different beyond 2 u');
  });

  it('adds the scatter of units for designs, stated or of the table, which may take the word back', async () => {
    const args = ['mass-roll-up', '--study', 'one', '--subject', 'P1', '--output', 'mass'];
    const designs = await line.run('compare', ...args, '--with', 'P2', '--designs');
    expect(designs.out).toMatch(/difference\s+\+1\.00 ± 0\.22 kg: different, heavier/);
    expect(designs.out).toContain('unit-to-unit scatter 1 %: guessed');
    const wide = ['--designs', '--scatter', 'mass=0.5 kg'];
    const stated = await line.run('compare', ...args, '--with', 'P2', ...wide);
    expect(stated.out).toMatch(/\+1\.00 ± 0\.72 kg: indicated$/m);
  });

  it('takes the other side from another study', async () => {
    const args = ['mass-roll-up', '--study', 'one', '--subject', 'P1', '--output', 'mass'];
    const { comparisons } = (await line.json('compare', ...args, '--with', 'other:P1')) as {
      comparisons: { d: number; decision: { word: string; direction: string } }[];
    };
    expect(comparisons).toMatchObject([
      { d: expect.closeTo(-2.5, 9), decision: { word: 'different', direction: 'lighter' } },
    ]);
  });

  it.each([
    ['an output that is not there', ['--output', 'colour'], 5],
    ['a scatter of no kind', ['--scatter', 'heat=1 %'], 2],
    ['a study that is not there', ['--with', 'third:P1'], 3],
  ])('refuses %s', async (_, more, exit) => {
    const args = ['mass-roll-up', '--study', 'one', '--subject', 'P1', '--with', 'P2'];
    expect((await line.run('compare', ...args, ...more)).code).toBe(exit);
  });
});

describe('hoistside next', () => {
  it('names what has no known spread first, then what narrows most a minute', async () => {
    const ask = ['--ask', 'mass-roll-up.mass@P1=0.05 kg', '--ask', 'mass-roll-up.mass=0.1 kg'];
    const { code, out } = await line.run('next', '--study', 'one', ...ask);
    expect(code).toBe(0);
    expect(out).toMatch(/Open\n {2}- mass of the parts · 12\.00 ± 0\.10 kg · wider than asked/);
    const first = out.indexOf('P3 bracket, mass, all pieces: spread not known');
    const second = out.indexOf('P1 front frame, mass, all pieces: floor scale, 60 kg');
    expect(first).toBeGreaterThan(0);
    expect(second).toBeGreaterThan(first);
  });

  it('says when nothing is open', async () => {
    const { out } = await line.run('next', '--study', 'one', '--ask', 'mass-roll-up.mass@P1=5 kg');
    expect(out).toContain('Nothing is open');
  });

  it.each([
    ['mass-roll-up.colour=1 kg', 'Its outputs are'],
    ['mass=1 kg', 'names no output'],
    ['mass-roll-up.mass=-1 kg', 'not above zero'],
    ['mass-roll-up.mass=1 mm', 'mm'],
  ])('refuses to ask for %s', async (ask, why) => {
    const { code, err } = await line.run('next', '--study', 'one', '--ask', ask);
    expect(code).toBe(2);
    expect(err).toContain(why);
  });
});
