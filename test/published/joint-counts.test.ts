/**
 * Questions joint-census, fastener-census, seam-census and surface-census: counts of a list by
 * kind and in total, different words, and sums, against GROUP BY, COUNT(DISTINCT) and SUM of
 * SQLite (through the libsql package), a general-purpose grouping written by others. Own inputs and the
 * made-up joints of demo/, which are inputs here and prove nothing themselves. Common practice,
 * no source.
 */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import Libsql from 'libsql';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { askWritten, loadQuestion, type WrittenInputs } from '../../src/engine/index.ts';
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

/** One number from SQL over rows of (n, a, b, c). */
function bySql(
  sql: string,
  rows: readonly (readonly [number, string | number, string | number])[],
) {
  const db = new Libsql(':memory:');
  try {
    db.exec('create table t (n real, a, b)');
    const insert = db.prepare('insert into t values (?, ?, ?)');
    for (const row of rows) insert.run(...row);
    return (db.prepare(`select ${sql} as x from t`).get() as { x: number }).x;
  } finally {
    db.close();
  }
}

const ask = async (id: string, inputs: WrittenInputs) =>
  askWritten((await loadQuestion(id)).question, inputs);

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

interface DemoRow {
  readonly [column: string]: string;
}
const demoRows = (): DemoRow[] =>
  parse(readFileSync(`${ROOT}/demo/tables/van-27-clean/joints.csv`, 'utf8'), { columns: true });

describe('fastener census', () => {
  it('counts different words and elements as SQLite does', async () => {
    const rows = demoRows();
    const answer = await ask('fastener-census', {
      joints: rows.map((r) => ({
        count: r.count_holes ?? '',
        type: r.type ?? '',
        spec: r.spec ?? '',
        torque: r.torque_Nm ? `${r.torque_Nm} N·m` : '',
        tool: r.tool ?? '',
        onRemoval: r.on_removal ?? '',
      })),
    });
    const sql = rows.map((r) => [Number(r.count_holes), r.tool ?? '', r.on_removal ?? ''] as const);
    const torques = rows.map((r) => [0, r.torque_Nm ?? '', ''] as const);
    expect(out(answer, 'tools').x).toBe(bySql("count(distinct nullif(a, ''))", sql));
    expect(out(answer, 'torques').x).toBe(bySql("count(distinct nullif(a, ''))", torques));
    expect(out(answer, 'renewed').x).toBe(bySql("sum(n) filter (where b = 'renew fastener')", sql));
    expect(out(answer, 'destructive').x).toBe(
      bySql("count(*) filter (where b = 'destroys part')", sql),
    );
    // Bolts, screws, nuts and rivets, counted by hand in the made-up table.
    expect(out(answer, 'fasteners').x).toBe(386);
    expect(answer.findings).toEqual([]);
  });

  it('names a torque whose fastener has no size, with its place', async () => {
    const row = { type: 'screw', tool: '', onRemoval: '' };
    const answer = await ask('fastener-census', {
      joints: [
        { count: '4', spec: 'M6x16', torque: '9 N·m', ...row },
        { count: '2', spec: 'self-tapping', torque: '2 N·m', ...row },
      ],
    });
    expect(answer.findings).toMatchObject([
      { code: 'torque-without-size', place: { subject: 'joints 2' }, value: '2 N·m' },
    ]);
  });

  it('refuses a negative count at its place', async () => {
    const joints = [
      { count: '-4', type: 'screw', spec: 'M6', torque: '', tool: '', onRemoval: '' },
    ];
    await expect(ask('fastener-census', { joints })).rejects.toMatchObject({
      refusals: [{ code: 'out-of-range', place: { row: 1, column: 'count' } }],
    });
  });
});

describe('seam and surface census', () => {
  it('add lengths, spots, rivets and adhesive as SQLite does', async () => {
    const joints = [
      {
        count: '9',
        spot: '0',
        rivet: '0',
        weld: '1460 mm',
        bead: '0 mm',
        adhesive: '0 g',
        kind: 'w',
      },
      {
        count: '2',
        spot: '0',
        rivet: '0',
        weld: '180 mm',
        bead: '800 mm',
        adhesive: '6 g',
        kind: 'a',
      },
      {
        count: '40',
        spot: '1',
        rivet: '0',
        weld: '0 mm',
        bead: '0 mm',
        adhesive: '0 g',
        kind: 's',
      },
      { count: '6', spot: '0', rivet: '1', weld: '0 mm', bead: '0 mm', adhesive: '0 g', kind: 'r' },
    ];
    const answer = await ask('seam-census', { joints, told: [] });
    const sql = joints.map((j) => [Number(j.count), Number.parseFloat(j.weld), j.bead] as const);
    expect(out(answer, 'weld').x).toBeCloseTo(bySql('sum(n * a)', sql) / 1000, 12);
    expect(out(answer, 'spots').x).toBe(40);
    expect(out(answer, 'rivets').x).toBe(6);
    expect(out(answer, 'bead').x).toBeCloseTo(1.6, 12);
    expect(out(answer, 'adhesive').x).toBeCloseTo(0.012, 12);
  });

  it('adds areas, edges and drains as SQLite does', async () => {
    const parts = [
      { area: '3.8 m2', edge: '0 m', drains: '8' },
      { area: '0.45 m2', edge: '5.54 m', drains: '3' },
    ];
    const answer = await ask('surface-census', { parts });
    const sql = parts.map(
      (p) => [Number(p.drains), Number.parseFloat(p.area), Number.parseFloat(p.edge)] as const,
    );
    expect(out(answer, 'area').x).toBeCloseTo(bySql('sum(a)', sql), 12);
    expect(out(answer, 'edge').x).toBeCloseTo(bySql('sum(b)', sql), 12);
    expect(out(answer, 'drains').x).toBe(bySql('sum(n)', sql));
  });
});
