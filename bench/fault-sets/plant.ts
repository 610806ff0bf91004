import type { MadeRecord, MadeRow } from './made-record.ts';
import { written } from './made-record.ts';
import type { Random } from './random.ts';
import { stepOf, toStep } from './weigh.ts';

/** A fault put into a record. */
export interface Planted {
  readonly kind: string;
  /** False for a kind that no catalogue of slips knows. */
  readonly known: boolean;
  /** Numbers of the rows that are wrong; finding one of them is finding the fault. */
  readonly rows: readonly string[];
  readonly words: string;
  /** A row whose mass went to another one. */
  readonly moves?: string;
  /** Where a reading of a scale was changed: what that adds to mass, X, Y, Z and modules. */
  readonly scale?: (record: MadeRecord) => number[];
}

/** Tries to plant a fault in rows that have none yet; undefined where this record has no place for it. */
type Plant = (record: MadeRecord, random: Random, free: Free) => Planted | undefined;
/** Rows that are still as they were weighed. */
type Free = (row: MadeRow) => boolean;

const POUND = 0.45359237;

const change = (row: MadeRow, kg: number, step = stepOf(row.instrument)): void => {
  row.mass = toStep(kg, step);
};

/** A fault of one weighed row, to which a mass is given anew. */
const onRow =
  (
    kind: string,
    wanted: (row: MadeRow) => boolean,
    slip: (row: MadeRow, kg: number, random: Random) => string,
    known = true,
  ): Plant =>
  (record, random, free) => {
    const rows = record.rows.filter((r) => free(r) && written(r) > 0 && wanted(r));
    if (rows.length === 0) return undefined;
    const row = random.pick(rows);
    const before = row.mass;
    const how = slip(row, written(row), random);
    return {
      kind,
      known,
      rows: [row.number],
      words: `${row.number} ${before} → ${row.mass} ${how}`,
    };
  };

const any = () => true;

const pounds = onRow('pounds as kilograms', any, (row, kg) => {
  change(row, kg / POUND);
  return 'lb';
});

const decimal = onRow('decimal shifted', any, (row, kg, random) => {
  const factor = random.weighted([
    [10, 0.45],
    [0.1, 0.45],
    [1000, 0.05],
    [0.001, 0.05],
  ]);
  row.mass = String(Number((kg * factor).toPrecision(12)));
  return `× ${factor}`;
});

const twice = onRow('weighed twice', any, (row, kg) => {
  change(row, 2 * kg);
  return 'twice';
});

const pieces = onRow(
  'quantity miscounted',
  (row) => row.pieces >= 2,
  (row, kg, random) => {
    const few = random.uniform() < 0.6;
    const off = few
      ? random.pick([1, 1, 2])
      : Math.max(1, Math.round(row.pieces * random.between(0.05, 0.25)));
    const more = random.uniform() < 0.5 || row.pieces - off < 1;
    const counted = row.pieces + (more ? off : -off);
    row.mass = String(Number(((kg * counted) / row.pieces).toFixed(3)));
    const was = row.pieces;
    row.pieces = counted;
    return `${counted} for ${was}`;
  },
);

const tare: Plant = (record, random, free) =>
  onRow('tare not taken off', any, (row, kg, r) => {
    const tote = r.pick(record.tares);
    change(row, kg + tote.mass);
    return tote.label;
  })(record, random, free);

const sides = onRow(
  'sides differing',
  (row) => /\b[LR]H\b/.test(row.name),
  (row, kg, random) => {
    const off = random.between(0.04, 0.4) * (random.uniform() < 0.6 ? 1 : -1);
    change(row, kg * (1 + off));
    return `${(100 * off).toFixed(0)} %`;
  },
);

const distance = (a: MadeRow, b: MadeRow): number =>
  Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1], a.at[2] - b.at[2]);
const FASTENER = /bolt|screw/i;

/** Rows that a part may have been weighed with: its assembly's bolts, or what sits close to it. */
const guests = (record: MadeRecord, host: MadeRow): MadeRow[] =>
  record.rows.filter(
    (g) =>
      g !== host &&
      g.assembly === host.assembly &&
      written(g) < written(host) &&
      (FASTENER.test(g.name) || distance(g, host) < 0.4),
  );

const weighedWith: Plant = (record, random, free) => {
  const hosts = record.rows.filter(
    (h) => free(h) && written(h) > 0.5 && guests(record, h).length > 0,
  );
  if (hosts.length === 0) return undefined;
  const host = random.pick(hosts);
  const all = guests(record, host);
  const bolts = all.filter((g) => FASTENER.test(g.name));
  const guest = random.pick(bolts.length > 0 && random.uniform() < 0.5 ? bolts : all);
  const before = host.mass;
  change(host, written(host) + written(guest));
  return {
    kind: 'weighed with a part that has its own row',
    known: true,
    rows: [host.number],
    words: `${host.number} ${before} → ${host.mass} with ${guest.number}`,
  };
};

/** Without a reading, and its mass on what it was still fixed to. */
const absorbed: Plant = (record, random, free) => {
  const able = record.rows.filter((r) => free(r) && written(r) > 1);
  if (able.length < 2) return undefined;
  const guest = random.pick(able);
  const near = able.filter((h) => h !== guest && distance(h, guest) < 1 && !isMirror(h, guest));
  if (near.length === 0) return undefined;
  const host = random.pick(near);
  const words = `${guest.number} ${guest.mass} on ${host.number} ${host.mass}`;
  change(host, written(host) + written(guest));
  guest.mass = '';
  return {
    kind: 'still on another, no reading',
    known: true,
    rows: [host.number],
    words,
    moves: guest.number,
  };
};

const isMirror = (a: MadeRow, b: MadeRow): boolean =>
  a.name.replace(/\b[LR]H\b/, '') === b.name.replace(/\b[LR]H\b/, '');

const swapped: Plant = (record, random, free) => {
  const at = record.rows.flatMap((a, i) => {
    const b = record.rows[i + 1];
    return b && free(a) && free(b) && written(a) > 0 && written(b) > 0 && !isMirror(a, b)
      ? [[a, b] as const]
      : [];
  });
  if (at.length === 0) return undefined;
  const [a, b] = random.pick(at);
  const words = `${a.number} ${a.mass} ↔ ${b.number} ${b.mass}`;
  [a.mass, b.mass] = [b.mass, a.mass];
  return { kind: 'swapped with the next row', known: true, rows: [a.number, b.number], words };
};

const noReading = onRow('no reading', any, (row) => {
  row.mass = '';
  return 'never weighed';
});

/** Kinds of the catalogue, each as often as the others; a part without a reading besides. */
export const KNOWN: readonly Plant[] = [
  pounds,
  decimal,
  twice,
  pieces,
  tare,
  sides,
  weighedWith,
  absorbed,
  swapped,
];
export const NO_READING = noReading;

const oneSided = (row: MadeRow) => !/\b[LR]H\b/.test(row.name);

const anyMass = onRow(
  'mass wrong by anything',
  oneSided,
  (row, kg, random) => {
    const off = random.between(0.25, 0.9) * (random.uniform() < 0.5 ? 1 : -1);
    change(row, kg * (1 + off));
    return `${(100 * off).toFixed(0)} %`;
  },
  false,
);

const cornerWrong: Plant = (record, random) => {
  const corner = random.pick(['fl', 'fr', 'rl', 'rr'] as const);
  const off = random.pick([-20, -10, -9, 9, 10, 20]);
  record.corners[corner] += off;
  const [front, right] = [corner.startsWith('f'), corner.endsWith('r')];
  return {
    kind: 'corner load mistyped',
    known: false,
    rows: [],
    words: `${corner} ${off} kg`,
    scale: ({ wheelbase, track, modules }) => [
      off,
      front ? 0 : off * wheelbase,
      (off * (right ? 1 : -1) * (front ? track.front : track.rear)) / 2,
      0,
      ...modules.map(() => 0),
    ],
  };
};

const placeWrong: Plant = (record, random, free) => {
  const rows = record.rows.filter((r) => free(r) && written(r) > 1);
  const row = random.pick(rows);
  const off = random.pick([-1, 1]) * random.pick([0.9, 1, 2]);
  const axis = random.pick([0, 0, 1]);
  row.at[axis] = Number(((row.at[axis] ?? 0) + off).toFixed(3));
  return {
    kind: 'position mistyped',
    known: false,
    rows: [row.number],
    words: `${row.number} ${'xy'[axis]} ${off} m`,
  };
};

const notListed: Plant = (record, random, free) => {
  const rows = record.rows.filter((r) => free(r) && written(r) > 0 && oneSided(r));
  const row = random.pick(rows);
  record.rows.splice(record.rows.indexOf(row), 1);
  for (const module of record.modules)
    module.holds.splice(0, module.holds.length, ...module.holds.filter((n) => n !== row.number));
  return {
    kind: 'in no row at all',
    known: false,
    rows: [row.number],
    words: `${row.number} ${row.mass} not listed`,
  };
};

/** Kinds outside the catalogue. */
export const UNKNOWN: readonly Plant[] = [anyMass, cornerWrong, placeWrong, notListed];

/** Plants faults of the kinds given, one after the other, each in rows of its own. */
export function plantAll(record: MadeRecord, kinds: readonly Plant[], random: Random): Planted[] {
  const taken = new Set<string>();
  const free: Free = (row) => !taken.has(row.number);
  return kinds.flatMap((plant) => {
    const before = new Map(record.rows.map((r) => [r.number, `${r.mass} ${r.at}`]));
    const made = plant(record, random, free);
    for (const row of record.rows)
      if (before.get(row.number) !== `${row.mass} ${row.at}`) taken.add(row.number);
    for (const number of made?.rows ?? []) taken.add(number);
    return made ? [made] : [];
  });
}
