import type { Id } from '../../../study/index.ts';
import type { Finder, Found, ScalarColumn, TableInput } from '../../method.ts';
import { EVERY } from './design-lines.ts';

type Numbers = Pick<ScalarColumn, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range'>;

const column = (c: Numbers, where: string, find: ScalarColumn['find']): ScalarColumn => ({
  ...{ in: 'scalar', optional: true, bounds: { atLeast: 0 }, ...c, where, find },
});

/** A number of the line itself. */
const own = (c: Numbers, property: string): ScalarColumn =>
  column(c, `${c.meaning}, of the line`, (at, row) => at.number(row, property));

/** A cell of the rate book by a word of the line; not there where the line has no such word. */
const rated = (c: Numbers, group: string, property: string): ScalarColumn =>
  column(c, `rate book, ${group} that fits the ${property} of the line`, (at, row): Found => {
    const { text } = at.text(row, property);
    return text === ''
      ? at.missing(c.meaning, `the line has no ${property}`)
      : at.rate(group, text);
  });

const money = { kind: 'money', unit: '{u}' } as const;
const ratio = { kind: 'ratio', unit: '1' } as const;
const seconds = { kind: 'time', unit: 's' } as const;
const perKg = { kind: 'moneyPerMass', unit: '{u}/kg' } as const;

/** Lines below the designs below the subject, in the order of their labels. */
const linesOf = (at: Finder): readonly Id[] =>
  below(at, at.subject).flatMap((design) => below(at, design));
const below = (at: Finder, id: Id): readonly Id[] =>
  at.view
    .children(id)
    .filter((n) => n.kind === 'alternative')
    .map((n) => n.id);

const nameOf = (at: Finder, id: Id | null | undefined): string =>
  (id && at.view.node(id)?.name) || '';

export const LINES: TableInput = {
  in: 'table',
  name: 'lines',
  meaning: `things that a design is made of or needs beside it; those of "${EVERY}" belong to each`,
  where: 'alternatives below the alternatives below the subject',
  rows: linesOf,
  columns: [
    {
      ...{ in: 'term', name: 'design', meaning: `design that the line is in, or "${EVERY}"` },
      where: 'name of the alternative above, unless the line says another',
      find: (at, row) =>
        at.word(at.text(row, 'cost.in').text || nameOf(at, at.view.node(row)?.parent)),
    },
    {
      ...{ in: 'term', name: 'line', meaning: 'what it is', where: 'name of the line' },
      find: (at, row) => at.word(nameOf(at, row)),
    },
    own(
      { ...ratio, name: 'pieces', symbol: 'n', meaning: 'pieces, or metres', range: [0.01, 5000] },
      'cost.pieces',
    ),
    own(
      { ...money, name: 'price', symbol: 'p_b', meaning: 'price of one', range: [0, 5000] },
      'cost.price',
    ),
    own(
      {
        kind: 'mass',
        unit: 'kg',
        name: 'mass',
        symbol: 'm',
        meaning: 'mass of one',
        range: [0, 500],
      },
      'cost.mass',
    ),
    rated(
      {
        ...perKg,
        name: 'materialPrice',
        symbol: 'p',
        meaning: 'price of the material',
        range: [0.1, 200],
      },
      'material',
      'cost.material',
    ),
    column(
      {
        ...{ ...ratio, name: 'gross', symbol: 'y', range: [1, 4] },
        meaning: 'gross over net mass of the process',
      },
      'gross over net mass of the line, else rate book, gross factor that fits its process',
      (at, row): Found => {
        const said = at.number(row, 'cost.gross');
        const { text } = at.text(row, 'cost.process');
        return 'missing' in said && text !== '' ? at.rate('factor/yield', text) : said;
      },
    ),
    rated(
      { ...perKg, name: 'conversion', symbol: 'c', meaning: 'conversion by mass', range: [0, 50] },
      'process',
      'cost.conversion',
    ),
    own(
      {
        ...seconds,
        name: 'time',
        symbol: 't',
        meaning: 'time of people for one',
        range: [0, 36000],
      },
      'cost.time',
    ),
    own(
      {
        ...seconds,
        name: 'machineTime',
        symbol: 't_M',
        meaning: 'time of the machine for one',
        range: [0, 36000],
      },
      'cost.machineTime',
    ),
    rated(
      {
        kind: 'moneyPerTime',
        unit: '{u}/h',
        name: 'machineRate',
        symbol: 'R',
        meaning: 'rate of the machine',
        range: [1, 2000],
      },
      'rate',
      'cost.machine',
    ),
    own(
      {
        kind: 'area',
        unit: 'm2',
        name: 'coated',
        symbol: 'A',
        meaning: 'area coated of one',
        range: [0, 60],
      },
      'cost.coated',
    ),
    column(
      {
        kind: 'moneyPerArea',
        unit: '{u}/m2',
        name: 'coatPrice',
        symbol: 'p_A',
        meaning: 'price of coating',
        range: [0, 100],
      },
      'rate book, coating',
      (at) => at.rate('rate/coating', 'coating'),
    ),
    own(
      { ...money, name: 'tool', symbol: 'T', meaning: 'price of a set of tools', range: [0, 2e7] },
      'cost.tool',
    ),
    own(
      {
        kind: 'count',
        unit: '1',
        name: 'toolLife',
        symbol: 'L',
        meaning: 'pieces that a set of tools lasts',
        range: [1, 1e8],
      },
      'cost.toolLife',
    ),
    own(
      {
        ...ratio,
        name: 'crossings',
        symbol: 'x',
        meaning: 'leak crossings of one',
        range: [0, 1000],
      },
      'cost.crossings',
    ),
    own(
      {
        ...seconds,
        name: 'service',
        symbol: 't_S',
        meaning: 'time of one in service',
        range: [0, 36000],
      },
      'cost.service',
    ),
    own(
      {
        kind: 'area',
        unit: 'm2',
        name: 'face',
        symbol: 'A_f',
        meaning: 'face of a plate',
        range: [0.001, 50],
      },
      'cost.face',
    ),
    own(
      {
        kind: 'length',
        unit: 'mm',
        name: 'thickness',
        symbol: 'h',
        meaning: 'thickness of a plate, or of both skins',
        range: [0.3, 60],
      },
      'cost.thickness',
    ),
    own(
      {
        kind: 'length',
        unit: 'mm',
        name: 'core',
        symbol: 'h_c',
        meaning: 'core between the skins',
        range: [0, 200],
      },
      'cost.core',
    ),
    own(
      {
        kind: 'stress',
        unit: 'GPa',
        name: 'modulus',
        symbol: 'E',
        meaning: 'Young’s modulus',
        range: [0.5, 450],
      },
      'cost.modulus',
    ),
    own(
      { ...ratio, name: 'poisson', symbol: 'ν', meaning: 'Poisson ratio', range: [0, 0.49] },
      'cost.poisson',
    ),
    own(
      {
        kind: 'density',
        unit: 'kg/m3',
        name: 'density',
        symbol: 'ρ',
        meaning: 'density',
        range: [100, 12000],
      },
      'cost.density',
    ),
  ],
};
