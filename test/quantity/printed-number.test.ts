import { describe, expect, it } from 'vitest';
import { addingUp, type Printable, printedLine, printedNumber } from '../../src/quantity/index.ts';

const mass = (x: number, u: Printable['u'], more: Partial<Printable> = {}): Printable => ({
  ...{ x, u, kind: 'mass', unit: 'kg' },
  ...more,
});
const line = (n: Printable, beside: readonly Printable[] = []): string =>
  printedLine(printedNumber(n, beside)).replaceAll('\u202f', ' ');

const parts = mass(1645.291, 0.198);
const scales = mass(1645.5, 1);
const gap = mass(1645.291 - 1645.5, 1.02);
const other = mass(12.3456, 0.198);

describe('a printed number', () => {
  it('is rounded alone, by JCGM 100:2008, 7.2.6', () => {
    expect(line(parts)).toBe('1 645.29 ± 0.20 kg');
    expect(line(mass(0.585224, 0.000067, { kind: 'ratio', unit: '%' }))).toBe(
      '(58.5224 ± 0.0067) %',
    );
  });

  it('stands to one place with what it is compared with, and with nothing else', () => {
    const all = [parts, scales, gap, other];
    expect(all.map((n) => line(n, addingUp(n, all)))).toEqual([
      '1 645.3 ± 0.2 kg',
      '1 645.5 ± 1.0 kg',
      '−0.2 ± 1.0 kg',
      '12.35 ± 0.20 kg',
    ]);
  });

  it('loses no more than one digit beside a coarser one', () =>
    expect(line(mass(5, 0.01), [mass(6, 1)])).toBe('5.000 ± 0.010 kg'));

  it.each([
    [
      mass(1618.59, 'incomplete', { knownU: 0.2, lacks: 2 }),
      '1 618.6 kg, not complete: 2 values missing, known part ± 0.2',
    ],
    [
      mass(1618.59, 'incomplete', { knownU: 0.2, lacks: 1 }),
      '1 618.6 kg, not complete: 1 value missing, known part ± 0.2',
    ],
    [
      mass(1618.59, 'incomplete', { knownU: 0.2, lacks: 0 }),
      '1 618.6 kg, spread incomplete, known part ± 0.2',
    ],
    [mass(1618.59, 'incomplete', { knownU: 0 }), '1 619 kg, not complete'],
    [mass(462, 'unknown', { digits: 3 }), '462 kg, spread not known'],
    [mass(5, 0), '5 kg'],
  ])('says what it lacks, in one wording %#', (n, words) => expect(line(n)).toBe(words));
});
