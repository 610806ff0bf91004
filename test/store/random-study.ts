import fc from 'fast-check';
import {
  type Change,
  type Entry,
  type Reading,
  rowId,
  type TableChunk,
} from '../../src/study/index.ts';
import { addNode, Device, studyPut } from './make-changes.ts';

/** One thing someone does, told by numbers that pick among what is there. */
interface Deed {
  readonly kind: number;
  readonly device: number;
  readonly clock: number;
  readonly a: number;
  readonly b: number;
}

const deed: fc.Arbitrary<Deed> = fc.record({
  kind: fc.nat(99),
  device: fc.nat(2),
  clock: fc.nat(60_000),
  a: fc.nat(9999),
  b: fc.nat(9999),
});

/**
 * Changes of one study by three devices whose clocks disagree: nodes, tables, moves that may
 * make cycles, retirements, readings, choices, undoing and its undoing, in a random order of
 * arrival and cut into batches.
 */
export const randomArrivals: fc.Arbitrary<Change[][]> = fc
  .array(deed, { minLength: 1, maxLength: 30 })
  .chain((deeds) => {
    const changes = new Author().changesOf(deeds);
    return fc
      .shuffledSubarray(changes, { minLength: changes.length })
      .chain((order) => fc.array(fc.nat(4), { minLength: 8, maxLength: 8 }).map(cut(order)));
  });

const cut =
  (order: readonly Change[]) =>
  (sizes: readonly number[]): Change[][] => {
    const batches: Change[][] = [];
    for (let from = 0, i = 0; from < order.length; i++) {
      const size = 1 + (sizes[i % sizes.length] ?? 0);
      batches.push(order.slice(from, from + size));
      from += size;
    }
    return batches;
  };

const pick = <T>(all: readonly T[], n: number): T | undefined => all[n % all.length];

/** Remembers what was made, to refer to it; what it refers to may arrive later, or never stand. */
class Author {
  readonly #devices = ['a', 'b', 'c'].map((id, i) => new Device('study-1', id, i + 1));
  readonly #nodes: string[] = ['root'];
  readonly #readings: { readonly id: string; readonly subject: string }[] = [];
  readonly #gestures: string[] = [];
  readonly #tables: string[] = [];

  changesOf(deeds: readonly Deed[]): Change[] {
    const [first] = this.#devices;
    const opening = first?.change([studyPut('random'), addNode('root', null, 'vehicle')]);
    return [...(opening ? [opening] : []), ...deeds.map((d) => this.#change(d))];
  }

  #change(d: Deed): Change {
    const device = this.#devices[d.device % 3] as Device;
    device.setClock(d.clock);
    const undoes = d.kind >= 86 ? pick(this.#gestures, d.a) : undefined;
    const change =
      undoes === undefined ? device.change(this.#entries(d, device)) : device.undo(undoes);
    // Now and then two changes are one gesture.
    const gesture = d.b % 5 === 0 ? pick(this.#gestures, d.b) : undefined;
    const made = gesture === undefined ? change : { ...change, gesture };
    this.#gestures.push(made.gesture);
    return made;
  }

  #entries(d: Deed, device: Device): Entry[] {
    const node = pick(this.#nodes, d.a) ?? 'root';
    const other = pick(this.#nodes, d.b) ?? 'root';
    if (d.kind < 15) return [this.#added(device.newId(), other, d.b % 3 ? 'part' : 'assembly')];
    if (d.kind < 28) return [{ v: 1, e: 'table.add', table: this.#table(device.newId(), d) }];
    // The same table once more, as a device restored from a copy might send it.
    if (d.kind < 30)
      return [
        { v: 1, e: 'table.add', table: this.#table(pick(this.#tables, d.a) ?? device.newId(), d) },
      ];
    if (d.kind < 40) return [{ v: 1, e: 'node.move', id: node, parent: other }];
    if (d.kind < 47) return [{ v: 1, e: 'node.retire', id: node, why: 'not there' }];
    if (d.kind < 54) return [{ v: 1, e: 'node.name', id: node, name: `renamed ${d.b}` }];
    if (d.kind < 75) return [this.#reading(device.newId(), node, d)];
    if (d.kind < 80) return this.#onReading(d);
    if (d.kind < 82) return [studyPut(`title ${d.a}`, d.b % 4 ? 'kerb' : 'hung')];
    if (d.kind < 83) return [addNode(`root-${d.a % 2}`, null, 'vehicle')];
    return [
      this.#added(device.newId(), node, 'part'),
      { v: 1, e: 'node.move', id: node, parent: other },
    ];
  }

  #added(id: string, parent: string, kind: 'part' | 'assembly'): Entry {
    this.#nodes.push(id);
    return addNode(id, parent, kind);
  }

  #reading(id: string, subject: string, d: Deed): Entry {
    this.#readings.push({ id, subject });
    return { v: 1, e: 'reading.add', reading: reading(id, subject, d) };
  }

  #onReading(d: Deed): Entry[] {
    const on = pick(this.#readings, d.a);
    if (!on) return [];
    const of = { subject: on.subject, property: 'mass', condition: 'kerb' };
    if (d.b % 2) return [{ v: 1, e: 'choose', of, reading: on.id }];
    return [{ v: 1, e: 'reading.withdraw', id: on.id, subject: on.subject, why: 'wrong' }];
  }

  /** Rows stand below nodes that are there, and below a row of the same table. */
  #table(id: string, d: Deed): TableChunk {
    const ids = [2, 3, 4].map((row) => rowId(id, row));
    const named = { up: pick(this.#nodes, d.b) ?? 'root', own: ids[d.a % 3] ?? 'root' };
    this.#tables.push(id);
    this.#nodes.push(...ids);
    return table(id, named, [
      [`${d.a}-1`, 'bracket', 'up', '1.5', 'steel sheet'],
      [`${d.a}-2`, 'Träger', 'own', '', 'rubber'],
      [`${d.a}-3`, 'clip', d.b % 3 ? '' : 'own', `${d.b / 100}`, ''],
    ]);
  }
}

function reading(id: string, subject: string, d: Deed): Reading {
  const material = d.b % 3 === 0;
  return {
    id,
    of: {
      subject,
      property: material ? 'material' : 'mass',
      condition: d.b % 7 === 0 ? 'hung' : 'kerb',
    },
    value: material
      ? { t: 'text', text: `material ${d.a % 5}` }
      : { t: 'scalar', kind: 'mass', x: d.a / 7, spread: { s: 'normal', u: 0.1 } },
    asWritten: `${d.a}`,
    how: d.b % 2 ? 'measured' : 'guessed',
    by: 'R. Example',
    takenAt: { local: '2026-01-05T08:00:00' },
    instrument: 'scale',
    evidence: [],
    causes: [],
  };
}

export const table = (
  id: string,
  resolved: Readonly<Record<string, string>>,
  rows: readonly (readonly string[])[],
  firstRow = 2,
): TableChunk => ({
  id,
  parse: 1,
  nodeKind: 'part',
  file: 'parts.csv',
  headings: ['number', 'name', 'assembly', 'mass kg', 'material'],
  columns: [
    { use: 'label' },
    { use: 'name' },
    { use: 'parent' },
    { use: 'property', property: 'mass', kind: 'mass', unit: 'kg' },
    { use: 'property', property: 'material' },
  ],
  firstRow,
  rows,
  decimal: '.',
  resolved,
  root: 'root',
  condition: 'kerb',
  frame: 'vehicle',
  howWithInstrument: 'measured',
  howWithout: 'supplied',
  by: 'R. Example',
  takenAt: { local: '2026-01-05T08:00:00' },
});
