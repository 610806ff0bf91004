import { GALVANIC_LIMITS, type Metal, metalsIn } from '../../data/index.ts';
import {
  type DetailTable,
  type Finder,
  type PlainRow,
  question,
  type TermColumn,
} from '../method.ts';
import { CENSUS } from '../sections.ts';
import { parseFastenerSpec } from './fastener-spec.ts';
import { jointCount, jointTable } from './joint-columns.ts';
import { jointEnd, type Side } from './joint-ends.ts';

const PLACES = ['harsh', 'normal', 'controlled'] as const;

/** Of a word that is none of the places the strictest. */
const limitIn = (word: string | undefined): number =>
  GALVANIC_LIMITS[PLACES.find((place) => place === word) ?? 'harsh'];

/** Materials of what a joint holds on one side. */
const side = (name: Side, meaning: string): TermColumn => ({
  in: 'term',
  name,
  meaning,
  where: `material of the parts on the ${name} side`,
  find: (at, row) => {
    const texts = jointEnd(at.view, row, name).nodes.map((id) => at.text(id, 'material').text);
    return at.word([...new Set(texts)].filter((t) => t !== '').join('; '));
  },
});

/** A fastener with a thread is steel unless its specification names another metal. */
const fastener: TermColumn = {
  in: 'term',
  name: 'fastener',
  meaning: 'metal of the fastener; empty where there is none',
  where: 'specification of the joint: steel, unless it names another metal',
  find: (at, row) => at.word(fastenerMetal(at, row)),
};

function fastenerMetal(at: Finder, row: string): string {
  const spec = at.text(row, 'spec').text;
  if (parseFastenerSpec(spec)?.thread === undefined) return '';
  const named = metalsIn(spec.replace(/-\d+/g, ''));
  return named.length > 0 ? named.map((m) => m.words).join('; ') : 'steel';
}

export default question({
  id: 'galvanic-pairs',
  version: 1,
  title: 'Galvanic pairs',
  wording: 'Which joints bring unlike metals together?',
  subject: 'study',
  section: CENSUS,
  inputs: [
    jointTable(
      jointCount,
      side('from', 'materials on one side'),
      side('to', 'materials on the other side'),
      fastener,
    ),
    {
      in: 'term',
      name: 'place',
      meaning:
        'where the joints are: harsh is outside, wet or salty; normal is inside, not controlled',
      options: PLACES,
      where: 'not in a study: harsh unless another is asked for',
      find: (at) => at.word(at.given('place') || 'harsh'),
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'unlike',
        symbol: 'G',
        kind: 'count',
        unit: '1',
        meaning: 'groups of joints that bring unlike metals together',
        shown: 'groups with two metals of different index',
      },
      {
        name: 'beyond',
        symbol: 'G!',
        kind: 'count',
        unit: '1',
        meaning: 'of these, groups whose indices differ by more than the limit of the place',
        shown:
          'groups with max |V₁ − V₂| above 0.15 V (harsh), 0.25 V (normal), 0.50 V (controlled)',
      },
      {
        name: 'elements',
        symbol: 'N!',
        kind: 'count',
        unit: '1',
        meaning: 'single joints beyond the limit',
        shown: 'Σ n of these',
      },
    ],
    solve: ({ tables, terms }) => {
      const pairs = (tables.joints ?? []).flatMap(widestPair);
      const limit = limitIn(terms.place) + 1e-9;
      const beyond = pairs.filter(({ volts }) => volts > limit);
      return {
        outputs: {
          unlike: pairs.length,
          beyond: beyond.length,
          elements: beyond.reduce((sum, { row }) => sum + Number(row.count), 0),
        },
        detail: pairTable(pairs),
      };
    },
  },
  modelError: {},
  sources: [
    {
      title: 'Anodic index of metals and its limits, after MIL-STD-889',
      at: 'table as reprinted in general references',
      status: 'published',
    },
    {
      title: 'Iron, aluminium, zinc and magnesium rows of that table',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Metals by the words of the parts’ materials; a part without a metal in its words makes no pair.',
    'Coatings, sealing and whether the place is wet are not in it: each pair is to be looked at.',
    'Bare steel and aluminium differ by 0.05 V only and count as within the limit; on salted roads the aluminium beside bare steel is attacked all the same (common practice).',
  ],
  cautions: [],
  checks: [
    {
      what: 'gold to silver 0.15 V within the limit; copper to steel 0.50 V and steel to magnesium 0.90 V beyond',
      source: 'anodic index as reprinted in general references after MIL-STD-889',
      status: 'from memory, recomputed',
      test: 'test/published/galvanic-index.test.ts',
    },
  ],
  example: {
    joints: [
      { count: '4', from: 'Al 6082-T6', to: 'copper', fastener: 'steel' },
      { count: '18', from: 'steel', to: 'Al 6082-T6', fastener: 'steel' },
    ],
    place: 'harsh',
  },
});

interface Pair {
  readonly row: PlainRow;
  readonly anode: Metal;
  readonly cathode: Metal;
  readonly volts: number;
}

/** The two metals furthest apart that a joint brings together. */
function widestPair(row: PlainRow): Pair[] {
  const metals = ['from', 'to', 'fastener']
    .flatMap((name) => metalsIn(String(row[name] ?? '')))
    .sort((a, b) => a.index - b.index);
  const [cathode, anode] = [metals[0], metals.at(-1)];
  if (!cathode || !anode || cathode.id === anode.id) return [];
  return [{ row, anode, cathode, volts: anode.index - cathode.index }];
}

const pairTable = (pairs: readonly Pair[]): DetailTable => ({
  title: 'Unlike metals, widest apart first',
  columns: [
    { name: 'joint' },
    { name: 'elements', kind: 'count' },
    { name: 'attacked' },
    { name: 'beside' },
    { name: 'difference', kind: 'voltage', unit: 'V' },
    { name: 'materials' },
  ],
  rows: [...pairs]
    .sort((a, b) => b.volts - a.volts || (String(a.row.subject) < String(b.row.subject) ? -1 : 1))
    .map(({ row, anode, cathode, volts }) => [
      String(row.subject),
      Number(row.count),
      anode.words,
      cathode.words,
      volts,
      [row.from, row.to, row.fastener].filter((t) => t !== '').join(' / '),
    ]),
});
