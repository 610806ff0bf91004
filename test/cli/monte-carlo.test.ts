import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CommandLine } from './run.ts';

let line: CommandLine;

beforeAll(async () => {
  line = await CommandLine.open();
});
afterAll(() => line.close());

const PACK = ['ask', 'pack-energy-density', '--example', '--monte-carlo'];

describe('hoistside ask --monte-carlo', () => {
  it('prints mean, spread, both intervals, and whether the linear result is confirmed', async () => {
    const { code, out } = await line.run(...PACK);
    expect(code).toBe(0);
    expect(out).toMatch(
      /samples, seed 1, settled to two digits of the spread; intervals hold 95 %/,
    );
    expect(out).toMatch(
      /161\.72 ± 0\.87 W·h\/kg\n +interval 160\.0\d to 163\.4\d W·h\/kg; shortest/,
    );
    expect(out).toContain('linear result confirmed: its interval is 160.01 to 163.44 W·h/kg');
  });

  it('is the same for the same seed, and prints indices where they are asked for', async () => {
    const args = [...PACK, '--samples', '10000', '--indices', '--seed', '7', '--json'];
    const first = (await line.json(...args)) as { sampled: readonly unknown[] };
    expect(first.sampled).toHaveLength(1);
    expect(await line.json(...args)).toEqual(first);
    expect(JSON.stringify(first.sampled)).toContain('"total"');
  });

  it('samples what is in doubt by itself, and only that', async () => {
    const plain = await line.run('ask', 'pack-energy-density', '--example');
    expect(plain.out).not.toContain('By Monte Carlo');
    // 390 kg known to ± 30 %: the quotient is curved over its spread.
    const doubted = await line.run(
      ...[
        'ask',
        'pack-energy-density',
        '--set',
        'energy=63.07 ± 0.3 kW.h',
        '--set',
        'mass=390 ± 117 kg',
      ],
      ...['--set', 'length=2 m', '--set', 'width=1.25 m', '--set', 'height=0.12 m'],
    );
    expect(doubted.out).toContain('doubt: ');
    expect(doubted.out).toContain('By Monte Carlo');
    expect(doubted.out).toContain('linear result not confirmed');
  });
});
