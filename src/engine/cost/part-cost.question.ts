import type { Id } from '../../study/index.ts';
import { partAssembly, partMass } from '../mass/part-columns.ts';
import { type Finder, type Found, question, type ScalarColumn } from '../method.ts';
import { COST } from '../sections.ts';
import { wholeSets } from './cost-lines.ts';
import { partFunctions } from './part-functions.ts';
import { lookAtParts } from './part-look.ts';
import { madeColumn, otherVolume, pieces, toolColumn, toolsApart } from './part-tools.ts';

/** The rate of a group that fits a part's material or process. */
const rateOf = (at: Finder, row: Id, group: string, property: 'material' | 'process') =>
  at.rate(group, at.text(row, property).text);

const partsOf = (at: Finder): readonly Id[] => at.view.nodes('part', at.subject).map((n) => n.id);

/** Parts that the rate book can price: both their material and their process are in it. */
const isCosted = (at: Finder, row: Id): boolean =>
  !('missing' in rateOf(at, row, 'material', 'material')) &&
  !('missing' in rateOf(at, row, 'process', 'process'));

/** 1 where the rate is a judgement or the reading behind it a guess, else 0. */
function assumedFlag(at: Finder, row: Id, group: string, property: 'material' | 'process'): Found {
  const rate = rateOf(at, row, group, property);
  if ('missing' in rate) return rate;
  const weak = [rate.how, at.text(row, property).how].some(
    (how) => how === 'guessed' || how === 'inferred',
  );
  return at.exact(weak ? 1 : 0, rate.label);
}

const rateColumn = (
  name: string,
  symbol: string,
  meaning: string,
  group: string,
  property: 'material' | 'process',
): ScalarColumn => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'moneyPerMass',
  unit: '{u}/kg',
  meaning,
  range: [0.1, 100],
  bounds: { atLeast: 0 },
  where: `rate book, ${group} that fits the ${property} of the part`,
  find: (at, row) => rateOf(at, row, group, property),
});

const flagColumn = (
  name: string,
  symbol: string,
  group: string,
  property: 'material' | 'process',
): ScalarColumn => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'ratio',
  unit: '1',
  meaning: `1 where the ${property} rate is a judgement, else 0`,
  range: [0, 1],
  bounds: { atLeast: 0 },
  where: `way of knowing of the ${group} rate and of the ${property}`,
  find: (at, row) => assumedFlag(at, row, group, property),
});

export default question({
  id: 'part-cost',
  version: 2,
  title: 'Should-cost of the parts by mass and process',
  wording: 'What should the parts cost to make, and how much of it rests on assumptions?',
  subject: 'study',
  section: COST,
  uses: ['mass-roll-up'],
  inputs: [
    {
      in: 'table',
      name: 'parts',
      meaning: 'parts whose material and process the rate book prices',
      where: 'parts below the subject that the rate book can price',
      rows: partsOf,
      only: isCosted,
      columns: [
        partMass,
        rateColumn('price', 'p', 'price of the material', 'material', 'material'),
        {
          in: 'scalar',
          name: 'gross',
          symbol: 'y',
          kind: 'ratio',
          unit: '1',
          meaning: 'gross over net mass of the process',
          range: [1, 4],
          bounds: { atLeast: 1 },
          where: 'rate book, gross factor that fits the process; 1 where there is none',
          find: (at, row) => {
            const factor = rateOf(at, row, 'factor/yield', 'process');
            return 'missing' in factor ? at.exact(1, 'no gross factor in the rate book') : factor;
          },
        },
        rateColumn('conversion', 'c', 'conversion by mass', 'process', 'process'),
        toolColumn('tool', 'T', 'money', '{u}', 'price of a set of tools', [0, 1e8], 0),
        toolColumn('life', 'L', 'count', '1', 'pieces that a set of tools lasts', [1, 1e9], 1),
        pieces,
        madeColumn,
        flagColumn('materialAssumed', 'aₘ', 'material', 'material'),
        flagColumn('conversionAssumed', 'aₚ', 'process', 'process'),
        partAssembly,
        partFunctions,
      ],
    },
    {
      in: 'table',
      name: 'notCosted',
      meaning: 'parts without a price for their material or process',
      where: 'the other parts below the subject',
      rows: partsOf,
      only: (at, row) => !isCosted(at, row),
      columns: [
        {
          in: 'term',
          name: 'why',
          meaning: 'what the rate book lacks',
          where: 'material and process of the part',
          find: (at, row) =>
            at.word(named(at.text(row, 'material').text, at.text(row, 'process').text)),
        },
      ],
    },
    {
      in: 'scalar',
      name: 'overhead',
      symbol: 'k',
      kind: 'ratio',
      unit: '1',
      meaning: 'factor for overhead and profit',
      range: [1, 2],
      bounds: { atLeast: 1 },
      where: 'rate book, factor for overhead and profit',
      find: (at) => at.rate('factor/overhead', 'overhead'),
    },
    toolsApart,
    otherVolume,
    {
      in: 'scalar',
      name: 'total',
      symbol: 'M',
      kind: 'mass',
      unit: 'kg',
      meaning: 'mass of all parts of the subject',
      range: [0.001, 8000],
      bounds: { above: 0 },
      where: 'mass of the parts',
      find: (at) => at.ask('mass-roll-up', at.subject, 'mass'),
    },
  ],
  body: {
    body: 'tally',
    table: 'parts',
    groupBy: 'assembly',
    terms: [
      {
        name: 'material',
        symbol: 'C₁',
        kind: 'money',
        shown: 'Σ m y p',
        needs: ['mass', 'gross', 'price'],
        each: (m, y, p) => m * y * p,
      },
      {
        name: 'conversion',
        symbol: 'C₂',
        kind: 'money',
        shown: 'Σ m c',
        needs: ['mass', 'conversion'],
        each: (m, c) => m * c,
      },
      {
        name: 'tooling',
        symbol: 'C₃',
        kind: 'money',
        shown: 'Σ T S / N, S whole sets for n N pieces',
        needs: ['tool', 'life', 'pieces', 'made'],
        each: (tool, life, n, made) => (tool * wholeSets((n * made) / life)) / made,
      },
      {
        name: 'assumed',
        symbol: 'A',
        kind: 'money',
        shown: 'Σ m (y p aₘ + c aₚ)',
        needs: ['mass', 'gross', 'price', 'conversion', 'materialAssumed', 'conversionAssumed'],
        each: (m, y, p, c, am, ap) => m * (y * p * am + c * ap),
      },
      {
        name: 'mass',
        symbol: 'Mc',
        kind: 'mass',
        shown: 'Σ m, costed',
        needs: ['mass'],
        each: (m) => m,
      },
    ],
    outputs: [
      {
        name: 'cost',
        symbol: 'C',
        kind: 'money',
        unit: '{u}',
        meaning: 'cost of the parts that are costed',
        shown: 'C = k (C₁ + C₂ + δ C₃)',
        of: (mat, conv, tools, _a, _m, k, apart) => k * (mat + conv + apart * tools),
      },
      {
        name: 'material',
        symbol: 'C₁',
        kind: 'money',
        unit: '{u}',
        meaning: 'material, gross, before overhead',
        shown: 'C₁ = Σ m y p',
        of: (mat) => mat,
      },
      {
        name: 'conversion',
        symbol: 'C₂',
        kind: 'money',
        unit: '{u}',
        meaning: 'conversion, before overhead',
        shown: 'C₂ = Σ m c',
        of: (_mat, conv) => conv,
      },
      {
        name: 'tooling',
        symbol: 'C₃',
        kind: 'money',
        unit: '{u}',
        meaning:
          'tools of a vehicle in whole sets, before overhead; counted only where they are apart',
        shown: 'C₃ = Σ T S / N',
        of: (_mat, _conv, tools) => tools,
      },
      {
        name: 'assumedShare',
        symbol: 'A/C',
        kind: 'ratio',
        unit: '%',
        meaning: 'share of the cost that rests on assumed rates',
        shown: 'A / (C₁ + C₂)',
        of: (mat, conv, _tools, assumed) => assumed / (mat + conv),
      },
      {
        name: 'costedShare',
        symbol: 'Mc/M',
        kind: 'ratio',
        unit: '%',
        meaning: 'share of the mass that is costed',
        shown: 'Mc / M',
        of: (_mat, _conv, _tools, _a, mass, _k, _apart, total) => mass / total,
      },
    ],
  },
  look: lookAtParts,
  valid: (x) =>
    (x.tables.notCosted ?? []).map((row) => ({
      code: 'not-costed',
      level: 'gap',
      place: { subject: String(row.subject) },
      value: String(row.why),
      what: 'not costed: the rate book has no price for this material and process; it is not counted as zero',
      next: 'Add a rate to a new version of the rate book, or take a quotation.',
    })),
  modelError: { cost: { relative: 0.15, sharedFraction: 0.5 } },
  sources: [
    {
      title:
        'Material and conversion by mass with overhead as a factor: first estimate of should-cost',
      status: 'common practice, no source',
    },
    {
      title: 'Esawi and Ashby (2003), resource cost model: material term m Cm / (1 − f)',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Conversion is taken in proportion to mass within a process; features and tolerances are not seen by it.',
    'Method error of 15 %, half of its variance common to all designs: judgement.',
    'Rates of the book hold for its volume and years. Bought-in parts and assemblies have no model here.',
    'Tools are held to be in the conversion by mass unless they are counted apart; then they are paid in whole sets over the pieces and years of the rate book.',
    'The spread of a flag is none: the assumed share moves with prices only.',
  ],
  cautions: [],
  checks: [
    {
      what: 'material term of the resource cost model, 1.2 kg at 2.50 with 10 % scrap: 3.3333',
      source: 'after Esawi and Ashby (2003), own inputs',
      status: 'own inputs, published formula',
      test: 'test/published/resource-cost.test.ts',
    },
  ],
  example: {
    parts: [
      {
        mass: '6.90 ± 0.01 kg',
        price: '1.05 / 1.3 / 1.65 {u}/kg',
        gross: '1.35 / 1.55 / 1.8',
        conversion: '0.5 / 0.8 / 1.25 {u}/kg',
        tool: '60000 ± 5000 {u}',
        life: 'exactly 500000',
        pieces: '2',
        made: 'exactly 300000',
        materialAssumed: '1',
        conversionAssumed: '1',
        assembly: '10',
        functions: 'structure 70 %; crash 30 %',
      },
      {
        mass: '4.85 ± 0.01 kg',
        price: '4.0 / 4.7 / 5.6 {u}/kg',
        gross: '1.08 / 1.14 / 1.22',
        conversion: '0.7 / 1.1 / 1.6 {u}/kg',
        tool: '8000 ± 900 {u}',
        life: 'exactly 40000',
        pieces: '1',
        made: 'exactly 300000',
        materialAssumed: '0',
        conversionAssumed: '1',
        assembly: '40',
        functions: '',
      },
    ],
    notCosted: [{ why: 'assembly / assembly' }],
    overhead: '1.14 / 1.18 / 1.24',
    apart: 'exactly 1',
    volume: '60000',
    total: '20 ± 0.1 kg',
  },
});

/** "steel / stamp"; what is not recorded leaves no stroke behind. */
function named(material: string, process: string): string {
  return [material, process].filter((word) => word !== '').join(' / ');
}
