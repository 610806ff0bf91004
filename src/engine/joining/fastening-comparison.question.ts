import type { Finding } from '../../study/index.ts';
import {
  type DetailTable,
  type Finder,
  type PlainInputs,
  type PlainRow,
  question,
  type Solved,
} from '../method.ts';
import { COST } from '../sections.ts';
import { FASTENING_FIGURES, fasteningColumn, notApplicable } from './fastening-columns.ts';

export default question({
  id: 'fastening-comparison',
  version: 1,
  title: 'Two fastenings compared',
  wording: 'What does one fastening cost against another, both sides and both services in it?',
  subject: 'alternative',
  section: COST,
  inputs: [
    {
      in: 'term',
      name: 'pair',
      meaning: 'numbers of the two to be compared; the first two when empty',
      where: 'not in a study: as asked',
      find: (at) => at.word(at.given('pair')),
    },
    {
      in: 'table',
      name: 'fastenings',
      meaning: 'one way to fasten the same thing; the first two are compared',
      where: 'alternatives below the subject, the pair asked for first, then by their numbers',
      rows: alternatives,
      columns: [...FASTENING_FIGURES.map(fasteningColumn), notApplicable],
    },
    {
      in: 'scalar',
      name: 'labour',
      symbol: 'w',
      kind: 'moneyPerTime',
      unit: '{u}/h',
      meaning: 'rate of labour',
      range: [1, 500],
      bounds: { above: 0 },
      where: 'rate book, labour',
      find: (at) => at.rate('rate/labour', 'labour'),
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'first',
        symbol: 'C₁',
        kind: 'money',
        unit: '{u}',
        meaning: 'cost of the first over its life',
        shown: 'C = n (p + pₙ) + K + w n (tₐ + tₙ) + v (w (n (tᵣ + tₐ) + t_d) + q)',
      },
      {
        name: 'second',
        symbol: 'C₂',
        kind: 'money',
        unit: '{u}',
        meaning: 'cost of the second over its life',
        shown: 'the same of the second',
      },
      {
        name: 'difference',
        symbol: 'ΔC',
        kind: 'money',
        unit: '{u}',
        meaning: 'second less first',
        shown: 'ΔC = C₂ − C₁',
        decides: 'difference',
      },
      {
        name: 'assembly',
        symbol: 'ΔT',
        kind: 'time',
        unit: 's',
        meaning: 'time to assemble, second less first, nut side included',
        shown: 'ΔT = n₂ (tₐ₂ + tₙ₂) − n₁ (tₐ₁ + tₙ₁)',
        decides: 'difference',
      },
    ],
    solve: compare,
  },
  modelError: {},
  sources: [
    {
      title: 'Costs of both sides of a joint, of its tools, and of taking it apart and renewing it',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Each visit takes the joint apart and puts it together again with the time of assembly.',
    'Costs of later years count in full: no interest.',
    'Alternatives share the rate of labour; a figure that does not apply counts as nothing.',
  ],
  cautions: [],
  checks: [
    {
      what: 'closed with every figure: costs worked by hand; with one figure open there is no comparison',
      source: 'own inputs, sums worked by hand',
      status: 'own inputs, published formula',
      test: 'test/published/fastening-costs.test.ts',
    },
  ],
  example: {
    pair: 'A B',
    fastenings: [
      {
        count: '62',
        price: '0.05 ± 0.003 {u}',
        nutPrice: '0.09 ± 0.005 {u}',
        nutTime: '3.2 ± 0.2 s',
        capital: '0.30 ± 0.05 {u}',
        assembly: '4.6 ± 0.3 s',
        removal: '3.5 ± 0.3 s',
        renewal: '2.5 ± 0.3 {u}',
        parting: '60 ± 10 s',
        visits: '0.4 ± 0.1',
        notApplicable: '',
      },
      {
        count: '58',
        price: '0.12 ± 0.007 {u}',
        capital: '0.15 ± 0.03 {u}',
        assembly: '2.4 ± 0.15 s',
        removal: '2.0 ± 0.2 s',
        renewal: '4.0 ± 0.5 {u}',
        parting: '60 ± 10 s',
        visits: '0.4 ± 0.1',
        notApplicable: 'nutPrice nutTime',
      },
    ],
    labour: '30 / 36 / 44 {u}/h',
  },
});

/** The alternatives below the subject, those asked for first. */
function alternatives(at: Finder): readonly string[] {
  const all = at.view.children(at.subject).filter((n) => n.kind === 'alternative');
  const asked = at.given('pair').split(/[;,\s]+/);
  const chosen = asked.flatMap((label) => all.find((n) => n.label === label) ?? []);
  return [...new Set([...chosen, ...all])].map((n) => n.id);
}

type Figures = Readonly<Record<string, number>>;

/** Every figure of a fastening: as given, nothing where it does not apply, NaN where it is open. */
function figuresOf(row: PlainRow): Figures {
  const apart = new Set(String(row.notApplicable ?? '').split(/[\s,;]+/));
  return Object.fromEntries(
    FASTENING_FIGURES.map(({ name }) => {
      const given = Number(row[name] ?? Number.NaN);
      return [name, Number.isNaN(given) && apart.has(name) ? 0 : given];
    }),
  );
}

const buildTime = (f: Figures): number => of(f, 'count') * (of(f, 'assembly') + of(f, 'nutTime'));
const of = (f: Figures, name: string): number => f[name] ?? Number.NaN;

function costs(f: Figures, labour: number): { build: number; service: number } {
  const parts = of(f, 'count') * (of(f, 'price') + of(f, 'nutPrice')) + of(f, 'capital');
  const apart = of(f, 'count') * (of(f, 'removal') + of(f, 'assembly')) + of(f, 'parting');
  return {
    build: parts + labour * buildTime(f),
    service: of(f, 'visits') * (labour * apart + of(f, 'renewal')),
  };
}

function compare({ tables, scalars }: PlainInputs): Solved {
  const rows = tables.fastenings ?? [];
  const labour = Number(scalars.labour);
  const figures = rows.map(figuresOf);
  const totals = figures.map((f) => {
    const { build, service } = costs(f, labour);
    return build + service;
  });
  const [first = Number.NaN, second = Number.NaN] = totals;
  const [built = Number.NaN, other = Number.NaN] = figures.map(buildTime);
  const open = rows.map((row, i) => openFigures(row, figures[i] ?? {}));
  const closed = rows.length > 1 && open.slice(0, 2).every((o) => o.length === 0);
  const only = (x: number): number => (closed ? x : Number.NaN);
  return {
    outputs: {
      first: only(first),
      second: only(second),
      difference: only(second - first),
      assembly: only(other - built),
    },
    detail: costTable(rows, figures, labour),
    findings: rows.length < 2 ? [tooFew(rows.length)] : open.flat(),
  };
}

/** What stands between two fastenings and a comparison: one finding for each open figure. */
const openFigures = (row: PlainRow, figures: Figures): Finding[] =>
  FASTENING_FIGURES.filter(({ name }) => Number.isNaN(of(figures, name))).map(
    ({ name, meaning, about }) => ({
      code: 'fastening-open',
      level: 'gap',
      place: { subject: String(row.subject), property: `fastening.${name}` },
      what: `${about} is open (${meaning}): this fastening can not be compared`,
      next: 'Fill it, or say that it is not applicable.',
    }),
  );

const tooFew = (n: number): Finding => ({
  code: 'fastening-open',
  level: 'gap',
  place: { column: 'fastenings' },
  value: String(n),
  what: 'a comparison takes two fastenings of the same thing',
  next: 'Add the other one as an alternative beside it.',
});

function costTable(
  rows: readonly PlainRow[],
  figures: readonly Figures[],
  labour: number,
): DetailTable {
  const shown = (x: number): number | string => (Number.isFinite(x) ? x : 'open');
  return {
    title: 'Costs over a life, as far as known',
    columns: [
      { name: 'fastening' },
      { name: 'build', kind: 'money', unit: '{u}' },
      { name: 'service', kind: 'money', unit: '{u}' },
      { name: 'open' },
    ],
    rows: rows.map((row, i) => {
      const f = figures[i] ?? {};
      const { build, service } = costs(f, labour);
      const open = FASTENING_FIGURES.filter(({ name }) => Number.isNaN(of(f, name)));
      const about = [...new Set(open.map((figure) => figure.about))].join(', ');
      return [String(row.subject), shown(build), shown(service), about || 'nothing'];
    }),
  };
}
