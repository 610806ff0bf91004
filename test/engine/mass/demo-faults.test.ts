import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../src/engine/index.ts';
import { askRegistered, out } from '../made-question.ts';
import { demoRecord } from './demo-record.ts';

/** Ranks of the rows of a table of suspects by the number of the part. */
const ranks = ({ detail }: Answer): Map<string, number> =>
  new Map(
    (detail?.rows ?? [])
      .filter((row) => typeof row[0] === 'number')
      .map((row) => [String(row[1]).split(' ')[0] ?? '', Number(row[0])]),
  );
const whatOf = ({ detail }: Answer, number: string): string =>
  String(detail?.rows.find((row) => String(row[1]).startsWith(number))?.[2]);

// Made-up data: that the search finds what was planted there shows it at work and proves nothing else.

describe('the clean record of the demo', async () => {
  const view = await demoRecord('clean');

  it('closes in force and in moments, and module by module', async () => {
    const answer = await askRegistered('mass-balance', view);
    for (const name of ['force', 'momentX', 'momentY', 'momentZ'])
      expect(out(answer, name).decision?.word).toBe('not distinguishable');
    expect(out(answer, 'force').x).toBeCloseTo(-0.209, 3);
    expect(answer.detail?.rows.map((r) => [r[1], r[7]])).toEqual([
      [29, 'not distinguishable'],
      [42, 'not distinguishable'],
    ]);
  });

  it('raises no suspect, and says what would still not be seen', async () => {
    const answer = await askRegistered('mass-faults', view);
    expect(answer.detail).toBeUndefined();
    const codes = answer.findings.map((f) => f.code);
    expect(codes).toEqual(expect.arrayContaining(['record-closes', 'gross-error-may-hide']));
    expect(codes).not.toContain('unexplained');
  });
});

describe('the faulty record of the demo', async () => {
  const view = await demoRecord('faulty');
  await askRegistered('mass-faults', view);
  const before = process.cpuUsage();
  const answer = await askRegistered('mass-faults', view);
  const cpu = process.cpuUsage(before);

  it('draws its suspects as likely as the table has them', () => {
    const drawn = answer.figures?.find((f) => f.title === 'Suspects by probability');
    if (drawn?.f !== 'bars') throw new Error('no suspects are drawn');
    const table = answer.detail?.rows.map((row) => row[7]);
    expect(drawn.rows.map((row) => row.number?.x)).toEqual(table);
    expect(drawn.rows[0]?.label.split(' ')[0]).toBe(
      String(answer.detail?.rows[0]?.[1]).split(' ')[0],
    );
    expect(drawn.rows.find((row) => row.label.startsWith('10-021'))?.word).toBe(
      'pounds as kilograms',
    );
  });

  it('lists its two missing readings, with what the sums leave for them', () => {
    const at = (code: string) =>
      answer.findings.filter((f) => f.code === code).map((f) => f.place.subject?.split(' ')[0]);
    expect(at('missing')).toEqual(expect.arrayContaining(['80-002', '90-001']));
    expect(at('mass-left-for-missing')).toEqual(['80-002', '90-001']);
  });

  it.each([
    ['40-001', 'quantity miscounted: 112 pieces'],
    ['10-021', 'pounds as kilograms: 22.4 kg'],
    ['60-001', 'weighed with another that has its own row: 60-021'],
    ['61-004', 'sides differ: 61-003'],
    ['10-052', ''],
  ])('has %s among the first ten suspects', (number, what) => {
    expect(ranks(answer).get(number)).toBeLessThanOrEqual(10);
    expect(whatOf(answer, number)).toContain(what);
  });

  it('says that the tare left in 30-014, 1.35 kg, is below what the whole vehicle shows', () => {
    const [whole] = answer.further?.[0]?.rows ?? [];
    expect(whole?.[0]).toBe('whole vehicle');
    expect(Number(whole?.[1])).toBeGreaterThan(1.35);
  });

  it('says that the gross error is larger than the gap', () => {
    expect(answer.findings.map((f) => f.code)).toContain('gross-error-may-be-larger');
  });

  it('has a check for each suspect, and what it explains in force and in moments', () => {
    for (const row of answer.detail?.rows ?? []) {
      expect(String(row.at(-1))).toMatch(/\.$/);
      expect(row.slice(3, 8).every((x) => Number.isFinite(x))).toBe(true);
    }
  });

  it('takes less than 2 s of computing', () => {
    expect((cpu.user + cpu.system) / 1e6).toBeLessThan(2);
  });

  it('gives the same answer twice', async () => {
    const again = await askRegistered('mass-faults', view);
    expect(again.detail).toEqual(answer.detail);
  });
});
