import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askRecord } from '../../bench/fault-sets/ask-record.ts';
import type { MadeRecord } from '../../bench/fault-sets/made-record.ts';
import { KNOWN, plantAll } from '../../bench/fault-sets/plant.ts';
import { Random } from '../../bench/fault-sets/random.ts';
import { trueVehicle } from '../../bench/fault-sets/true-vehicle.ts';
import { weigh } from '../../bench/fault-sets/weigh.ts';
import type { Answer } from '../../src/engine/index.ts';

const vehicle = trueVehicle();
const seeds = fc.integer({ min: 1, max: 1_000_000 });
/** The same draws on every run. */
const RUNS = { numRuns: 6, seed: 20_261 };

/** A record with one to three faults of the catalogue but for swapped rows, which hang on the order. */
function spoilt(seed: number): MadeRecord {
  const random = new Random(seed);
  const record = weigh(vehicle, random);
  const kinds = KNOWN.slice(0, -1);
  plantAll(
    record,
    Array.from({ length: 1 + (seed % 3) }, () => random.pick(kinds)),
    random,
  );
  return record;
}

/** Numbers of the suspects with their probabilities. */
const suspects = (answer: Answer, record: MadeRecord): [string, number][] =>
  (answer.detail?.rows ?? [])
    .filter((row) => typeof row[0] === 'number' && Number(row[7]) > 0.05)
    .map((row) => [
      record.rows[Number(/\d+$/.exec(String(row[1]))?.[0]) - 1]?.number ?? '',
      Number(row[7]),
    ]);

describe('suspects', () => {
  it('hardly hang on the order of the rows', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const record = spoilt(seed);
        const turned = { ...record, rows: [...record.rows].reverse() };
        const there = suspects(askRecord(record), record);
        const again = new Map(suspects(askRecord(turned), turned));
        for (const [number, p] of there.filter(([, p]) => p > 0.5))
          expect(Math.abs((again.get(number) ?? 0) - p)).toBeLessThan(0.2);
      }),
      RUNS,
    );
  });

  it('have probabilities between nothing and one, falling, with ranks that rise', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const rows = (askRecord(spoilt(seed)).detail?.rows ?? []).filter(
          (row) => typeof row[0] === 'number',
        );
        const [ps, ranks] = [7, 0].map((i) => rows.map((row) => Number(row[i])));
        expect(ps?.every((p) => p > 0 && p <= 1 + 1e-9)).toBe(true);
        expect(ps).toEqual([...(ps ?? [])].sort((a, b) => b - a));
        expect(ranks).toEqual([...(ranks ?? [])].sort((a, b) => a - b));
      }),
      RUNS,
    );
  });

  it('have nothing to explain in a record weighed anew: its gaps stay within a few u', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const clean = weigh(vehicle, new Random(seed));
        const { outs } = askRecord(clean);
        expect(Math.abs(outs.net?.x ?? Number.NaN)).toBeLessThan(5 * Number(outs.net?.u));
      }),
      RUNS,
    );
  });
});
