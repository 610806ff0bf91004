import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DELIMITERS, type Delimiter } from '../../src/capture/index.ts';
import type { Value } from '../../src/quantity/index.ts';
import { importText } from './help.ts';

interface Part {
  readonly mass: number;
  readonly u: number;
  readonly pieces: number;
  readonly position: readonly [number, number, number];
  readonly name: string;
}

const hundredths = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100);

const part: fc.Arbitrary<Part> = fc.record({
  mass: hundredths(0, 500),
  u: hundredths(0.01, 5),
  pieces: fc.integer({ min: 0, max: 200 }),
  position: fc.tuple(hundredths(-3000, 5000), hundredths(-900, 900), hundredths(0, 2000)),
  name: fc
    .string({
      unit: fc.constantFrom('a', 'B', ',', ';', '|', '\t', '"', 'ß', ' '),
      minLength: 1,
      maxLength: 8,
    })
    .map((s) => `x${s}x`),
});

interface Writing {
  readonly delimiter: Delimiter;
  readonly decimal: '.' | ',';
  readonly newline: '\n' | '\r\n';
  readonly places: 2 | 4;
  readonly mark: boolean;
}

const writing: fc.Arbitrary<Writing> = fc.record({
  delimiter: fc.constantFrom(...DELIMITERS),
  decimal: fc.constantFrom('.', ','),
  newline: fc.constantFrom('\n', '\r\n'),
  places: fc.constantFrom(2, 4),
  mark: fc.boolean(),
});

const HEADINGS = ['number', 'name', 'pieces', 'mass [kg]', 'mass u [kg]', 'x_mm', 'y_mm', 'z_mm'];

function written(parts: readonly Part[], w: Writing): string {
  const number = (x: number) => x.toFixed(w.places).replace('.', w.decimal);
  const quoted = (cell: string) =>
    cell.includes(w.delimiter) || cell.includes('"') ? `"${cell.replaceAll('"', '""')}"` : cell;
  const rows = parts.map((p, i) => [
    `p${i}`,
    p.name,
    String(p.pieces),
    number(p.mass),
    number(p.u),
    ...p.position.map(number),
  ]);
  const lines = [HEADINGS, ...rows].map((row) => row.map(quoted).join(w.delimiter));
  return `${w.mark ? '\ufeff' : ''}${lines.join(w.newline)}${w.newline}`;
}

describe('a valid table', () => {
  it('gives the same readings however it is written', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(part, { minLength: 1, maxLength: 12 }),
        writing,
        fc.integer({ min: 1, max: 64 }),
        async (parts, w, piece) => {
          const { view, preview } = await importText('parts', written(parts, w), {}, piece);
          expect([preview.delimiter.value, preview.decimal.value]).toEqual([
            w.delimiter,
            w.decimal,
          ]);
          for (const [i, p] of parts.entries()) {
            const node = view.find(`p${i}`);
            const read = (property: string): Value | undefined =>
              view.readings(node?.id ?? '', property)[0]?.reading.value;
            expect(node?.name).toBe(p.name);
            expect(read('count')).toMatchObject({ n: p.pieces });
            expect(read('mass')).toMatchObject({ x: p.mass, spread: { s: 'normal', u: p.u } });
            const position = read('position');
            expect(
              position?.t === 'vector' && position.x.map((x) => Math.round(x * 1e5) / 100),
            ).toEqual([...p.position]);
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});
