import { describe, expect, it } from 'vitest';
import { askRecord } from '../../../bench/fault-sets/ask-record.ts';
import type { MadeRecord } from '../../../bench/fault-sets/made-record.ts';
import { Random } from '../../../bench/fault-sets/random.ts';
import { trueVehicle } from '../../../bench/fault-sets/true-vehicle.ts';
import { weigh } from '../../../bench/fault-sets/weigh.ts';
import type { Answer } from '../../../src/engine/index.ts';

const vehicle = trueVehicle();

/** A record without faults, drawn once; each test spoils a copy of its own. */
const clean = weigh(vehicle, new Random(20261));
const spoilt = (slip: (record: MadeRecord) => void): { answer: Answer; record: MadeRecord } => {
  const record = structuredClone(clean);
  slip(record);
  return { answer: askRecord(record), record };
};
const rowOf = (record: MadeRecord, number: string) => {
  const row = record.rows.find((r) => r.number === number);
  if (!row) throw new Error(`no row ${number}`);
  return row;
};
const write = (record: MadeRecord, number: string, kg: (was: number) => number) => {
  const row = rowOf(record, number);
  row.mass = String(Number(kg(Number(row.mass)).toFixed(3)));
};
/** What a table of suspects says of a row: its rank, what it would be, and what else. */
function suspect({ answer, record }: ReturnType<typeof spoilt>, number: string) {
  const i = record.rows.findIndex((r) => r.number === number);
  const line = answer.detail?.rows.find((row) => row[1] === `parts ${i + 1}`);
  return { rank: Number(line?.[0]), slips: `${line?.[2]}; or ${line?.[8]}` };
}

describe('a slip of each kind is among the first suspects, with its kind', () => {
  const tote = vehicle.tares[2]?.mass ?? 0;
  it.each<[string, string, (r: MadeRecord) => void]>([
    ['12-001', 'pounds as kilograms', (r) => write(r, '12-001', (kg) => kg / 0.45359237)],
    ['10-026', 'decimal shifted', (r) => write(r, '10-026', (kg) => 10 * kg)],
    ['11-007', 'weighed twice', (r) => write(r, '11-007', (kg) => 2 * kg)],
    [
      ...(['40-012', 'quantity miscounted'] as const),
      (r) => {
        write(r, '40-012', (kg) => (kg * 6) / 8);
        rowOf(r, '40-012').pieces = 6;
      },
    ],
    ['40-015', 'tare not taken off', (r) => write(r, '40-015', (kg) => kg + tote)],
    [
      ...(['60-001', 'weighed with another that has its own row'] as const),
      (r) => write(r, '60-001', (kg) => kg + Number(rowOf(r, '60-021').mass)),
    ],
    ['11-001', 'sides differ', (r) => write(r, '11-001', (kg) => 0.9 * kg)],
    [
      ...(['11-013', 'swapped with the next row'] as const),
      (r) => {
        const [a, b] = [rowOf(r, '11-013'), rowOf(r, '12-001')];
        [a.mass, b.mass] = [b.mass, a.mass];
      },
    ],
    [
      ...(['10-031', 'weighed with a part that has no reading'] as const),
      (r) => {
        write(r, '10-031', (kg) => kg + Number(rowOf(r, '10-030').mass));
        rowOf(r, '10-030').mass = '';
      },
    ],
  ])('%s: %s', (number, kind, slip) => {
    const { rank, slips } = suspect(spoilt(slip), number);
    expect(rank).toBeLessThanOrEqual(10);
    expect(slips).toContain(kind);
  });
});

describe('what is of no known kind', () => {
  it('a corner load mistyped by 20 kg is unexplained', () => {
    const { answer } = spoilt((r) => {
      r.corners.rl += 20;
    });
    expect(answer.findings.map((f) => f.code)).toContain('unexplained');
    expect(answer.detail?.rows.at(-1)?.[2]).toMatch(/^unexplained: /);
  });

  it('a part in no row is unexplained, with its mass', () => {
    const { answer } = spoilt((r) => {
      r.rows.splice(
        r.rows.findIndex((row) => row.number === '30-010'),
        1,
      );
    });
    const line = answer.detail?.rows.at(-1);
    expect(line?.[2]).toMatch(/^unexplained: a part in no row/);
    expect(Number(line?.[3])).toBeCloseTo(-15.9, -1);
  });
});

describe('with less to close against', () => {
  it('modules alone still find a slip in one of them', () => {
    const record = structuredClone(clean);
    write(record, '40-015', (kg) => 2 * kg);
    const made = { answer: askRecord(record, ['fl', 'fr', 'rl', 'rr']), record };
    expect(made.answer.further?.[0]?.rows).toHaveLength(2);
    expect(suspect(made, '40-015')).toMatchObject({
      rank: 1,
      slips: expect.stringMatching(/twice/),
    });
  });

  it('nothing at all is said, not searched', () => {
    const record = { ...structuredClone(clean), modules: [] };
    const { findings, detail } = askRecord(record, ['fl', 'fr', 'rl', 'rr']);
    expect(detail).toBeUndefined();
    expect(findings.map((f) => f.code)).toContain('nothing-to-close-against');
  });
});

it('parts that were not weighed yet raise no suspect by themselves', () => {
  const { answer } = spoilt((r) => {
    for (const number of ['30-010', '70-003', '90-001']) rowOf(r, number).mass = '';
  });
  expect(answer.detail).toBeUndefined();
  expect(answer.findings.filter((f) => f.code === 'mass-left-for-missing')).toHaveLength(3);
});
