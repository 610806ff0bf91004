/**
 * Question joint-census: counts of a list by kind and in total, against GROUP BY of SQLite
 * (through the libsql package), a general-purpose grouping written by others. Own inputs and the
 * made-up joints of demo/, which are inputs here and prove nothing themselves. Common practice,
 * no source.
 */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import Libsql from 'libsql';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

type Row = Readonly<{ count: string; bag: string; type: string; spec: string }>;

/** Kind, groups and elements of each kind, most elements first, as SQLite groups them. */
function grouped(rows: readonly Row[]): readonly (readonly (string | number)[])[] {
  const db = new Libsql(':memory:');
  try {
    db.exec('create table joint (kind text, n integer)');
    const insert = db.prepare('insert into joint values (?, ?)');
    for (const row of rows) insert.run(row.type, Number(row.count));
    const found = db
      .prepare(
        'select kind, count(*) as groups, sum(n) as elements from joint group by kind order by elements desc, kind',
      )
      .all() as { kind: string; groups: number; elements: number }[];
    return found.map((r) => [r.kind, r.groups, r.elements]);
  } finally {
    db.close();
  }
}

const census = async (joints: readonly Row[]) =>
  askWritten((await loadQuestion('joint-census')).question, { joints });

const OWN: readonly Row[] = [
  { count: '62', bag: '62', type: 'screw', spec: 'M6x20' },
  { count: '18', bag: '17', type: 'bolt', spec: 'M12x90' },
  { count: '4', bag: '4', type: 'bolt', spec: 'M14x80' },
  { count: '16', bag: '16', type: 'screw', spec: 'M5x12' },
  { count: '9', bag: '', type: 'weld seam', spec: '1.46 m' },
  { count: '9', bag: '', type: 'plug', spec: '12 mm' },
];

function demoJoints(): Row[] {
  const file = readFileSync(`${ROOT}/demo/tables/van-27-clean/joints.csv`, 'utf8');
  const rows = parse(file, { columns: true }) as Record<string, string>[];
  return rows.map((r) => ({
    count: r.count_holes ?? '',
    bag: r.count_bag ?? '',
    type: r.type ?? '',
    spec: r.spec ?? '',
  }));
}

describe('joint census', () => {
  it.each([
    ['a list of our own', OWN],
    ['the joints of the demo', demoJoints()],
  ])('of %s counts as SQLite does', async (_, joints) => {
    const answer = await census(joints);
    const bySql = grouped(joints);
    const sum = (column: number) => bySql.reduce((total, row) => total + Number(row[column]), 0);
    expect(bySql.length).toBeGreaterThan(3);
    expect(answer.detail?.rows).toEqual(bySql);
    expect(out(answer, 'groups').x).toBe(sum(1));
    expect(out(answer, 'elements').x).toBe(sum(2));
  });

  it('is whole without a bag where there are no loose fasteners, and names the bag that differs', async () => {
    const answer = await census(OWN);
    expect(out(answer, 'elements').u).toBe(0);
    const bags = answer.findings.filter((f) => f.code === 'bag-differs-from-holes');
    expect(bags.map((f) => f.value)).toEqual(['17 by bag, 18 by holes']);
    expect(answer.findings.filter((f) => f.level === 'gap')).toEqual([]);
  });
});
