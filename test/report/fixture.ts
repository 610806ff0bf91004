import type { Answer, Out, Question, StepRow, Variable } from '../../src/engine/index.ts';
import {
  type AnsweredClaim,
  mapDrawing,
  type ReportInput,
  type ReportPhoto,
} from '../../src/report/index.ts';
import { SAMPLES } from '../drawing/sample-figures.ts';
import { cart } from './cart.ts';
import { GLYPHS, LITERAL, NO_GLYPH } from './signs.ts';

/** All of it made up: an invented cart, its answers by hand, one for each branch of a report. */

const BALANCE = { id: 'balance', title: 'Mass and balance', order: 10 };
const OTHER = { id: 'other', title: 'Made-up section', order: 99 };

const variable = (id: string, label: string, what: Variable['what'] = 'reading'): Variable => ({
  id,
  label,
  what,
  spread: { s: 'normal', u: 1 },
  u: 1,
  shift: 0,
  dof: null,
  place: what === 'reading' ? { subject: label, property: 'mass' } : {},
});

const VARIABLES: Answer['variables'] = {
  a: variable('a', '10-001 Frame'),
  b: variable('b', '20-001 Wheel'),
  c: variable('c', 'labour rate', 'rate'),
};

const out = (o: Partial<Out> & Pick<Out, 'name' | 'symbol' | 'meaning' | 'x' | 'u'>): Out => ({
  kind: 'mass',
  unit: 'kg',
  knownU: o.u === 'incomplete' ? 0 : o.u,
  dof: null,
  meanShift: 0,
  linear: [],
  missing: [],
  unknownSpread: [],
  doubts: [],
  ...o,
});

const step = (s: Partial<StepRow> & Pick<StepRow, 'symbol' | 'x'>): StepRow => ({
  meaning: 'mass of a part',
  shown: 'as read',
  kind: 'mass',
  unit: 'kg',
  u: 0.1,
  ...s,
});

const groupSum = (x: number, u: number, missing = 0) => ({ x, u, missing, unknownSpread: 0 });

function answer(question: Question, outs: readonly Out[], more: Partial<Answer> = {}): Answer {
  return {
    question: question.id,
    version: question.version,
    key: `${question.id}@1:00`,
    title: question.title,
    wording: question.wording,
    outs: Object.fromEntries(outs.map((o) => [o.name, o])),
    steps: [],
    findings: [],
    basis: { conditions: ['kerb'], subject: 'CART CART', invented: true },
    variables: VARIABLES,
    sources: question.sources,
    assumptions: question.assumptions,
    cautions: [],
    reads: [],
    ...more,
  };
}

function questionOf(id: string, title: string, more: Partial<Question> = {}): Question {
  return {
    id,
    version: 1,
    title,
    wording: `What is the ${title.toLowerCase()}?`,
    subject: 'study',
    section: BALANCE,
    inputs: [],
    body: { body: 'row', outputs: [] },
    modelError: {},
    sources: [{ title: 'Made-up source', at: 'page 1', status: 'from memory' }],
    assumptions: [`assumed by ${id}`],
    cautions: [],
    checks: [{ what: 'a check', source: 'nowhere', status: 'common practice', test: 'none' }],
    example: {},
    ...more,
  };
}

const closure = questionOf('closure', 'Closure');
const rollUp = questionOf('roll-up', 'Roll-up', {
  body: {
    body: 'tally',
    table: 'parts',
    groupBy: 'assembly',
    terms: [
      { name: 'mass', symbol: 'M', kind: 'mass', shown: 'Σ m', needs: [], each: () => 0 },
      { name: 'moment', symbol: 'S', kind: 'massMoment', shown: 'Σ m x', needs: [], each: () => 0 },
    ],
    outputs: [
      {
        name: 'mass',
        symbol: 'M',
        kind: 'mass',
        unit: 'kg',
        meaning: 'mass',
        shown: 'Σ m',
        of: () => 0,
      },
    ],
  },
});
const silent = questionOf('silent', 'Silent question');
const madeUp = questionOf('made-up', `Made up ${LITERAL}`, { section: OTHER });

const place = { subject: '30-001 Seat', property: 'mass' };

const CLOSURE = answer(
  closure,
  [
    out({
      name: 'parts',
      symbol: 'M',
      meaning: 'mass of the parts',
      x: 1645.291,
      u: 0.198,
      linear: [
        ['a', 0.17],
        ['b', -0.09],
        ['c', 0.004],
      ],
    }),
    out({
      name: 'scales',
      symbol: 'm',
      meaning: 'mass on the scales',
      x: 1645.5,
      u: 1,
      dof: 7.4,
      meanShift: 0.3,
    }),
    out({
      name: 'gap',
      symbol: 'Δ',
      meaning: 'gap',
      x: -0.209,
      u: 1.02,
      doubts: ['one rectangular input makes up most of the spread'],
      decision: {
        word: 'not distinguishable',
        d: -0.209,
        u: 1.02,
        dof: null,
        rule: 'different beyond 2 u',
      },
    }),
  ],
  {
    steps: [
      step({ symbol: 'm₁', x: 462.5, u: 0.5, how: 'measured', place: { subject: 'CART CART' } }),
      step({ symbol: 'm₂', x: 3, u: 'incomplete', how: 'seen' }),
      step({ symbol: 'k', x: 1, u: 0, how: 'exact', kind: 'ratio', unit: '1' }),
      step({ symbol: 'd', x: 2, how: 'assumed', meaning: 'assumed share' }),
    ],
    cautions: [{ id: 'hoist', words: 'Keep from under the load.', source: 'common practice' }],
    figures: [
      {
        f: 'bars',
        title: 'Balance: gap',
        alt: 'Both sides on one scale.',
        kind: 'mass',
        unit: 'kg',
        from: 'nearest',
        rows: [
          { label: 'mass of the parts', number: { x: 1645.291, u: 0.198 } },
          { label: 'mass on the scales', number: { x: 1645.5, u: 1 } },
        ],
        gap: { of: 0, less: 1, number: { x: -0.209, u: 1.02 }, word: 'not distinguishable' },
      },
    ],
  },
);

const ROLL_UP = answer(
  rollUp,
  [
    out({
      name: 'mass',
      symbol: 'M',
      meaning: 'mass',
      x: 1618.6,
      u: 'incomplete',
      knownU: 0.2,
      missing: [place],
    }),
    out({
      name: 'parts',
      symbol: 'M′',
      meaning: 'mass of the parts',
      x: 1644.8,
      u: 'incomplete',
      knownU: 0.4,
      unknownSpread: [place],
    }),
  ],
  {
    groups: [
      {
        group: '10 Frame',
        rows: 3,
        missing: 0,
        terms: { mass: groupSum(20, 0.1), moment: groupSum(1, 0) },
      },
      {
        group: '',
        rows: 2,
        missing: 1,
        terms: { mass: groupSum(5, 0.1, 1), moment: groupSum(1, 0, 1) },
      },
    ],
    findings: [
      {
        code: 'missing',
        level: 'gap',
        place: { ...place, file: 'parts.csv', row: 7, column: 'mass_kg' },
        value: '',
        what: 'missing',
        next: 'Weigh it.',
      },
      {
        code: 'not-costed',
        level: 'gap',
        place: { subject: '40-001 Pump' },
        value: 'brass / cast',
        what: 'no price',
        next: 'Take a quotation.',
      },
      {
        code: 'twice',
        level: 'doubt',
        place: { subject: '50-001 Bell' },
        value: LITERAL,
        what: 'counted twice',
        next: 'Count again.',
      },
    ],
  },
);

const MADE_UP = answer(
  madeUp,
  [
    out({
      name: 'share',
      symbol: 'σ',
      meaning: LITERAL,
      x: 0.12345,
      u: 0.002,
      secondOrderU: 0.003,
      kind: 'ratio',
      unit: '%',
    }),
    out({
      name: 'lean',
      symbol: 'φ',
      meaning: `lean ${GLYPHS}`,
      x: 0.2,
      u: 0.01,
      kind: 'angle',
      unit: 'deg',
    }),
  ],
  {
    figures: SAMPLES,
    detail: {
      title: 'By kind',
      columns: [
        { name: 'kind' },
        { name: 'pieces', kind: 'count' },
        { name: 'time', kind: 'time', unit: 'min' },
      ],
      rows: [
        ['bolt', 12, 90],
        [`nut ${NO_GLYPH}`, 3, Number.NaN],
      ],
    },
  },
);

const HEARD = {
  how: 'guessed',
  by: 'lead',
  heard: '2026-10-05T15:42',
  about: ['p1'],
  evidence: [],
} as const;

const CLAIMS: AnsweredClaim[] = [
  {
    claim: { id: 'c1', words: `It closes ${LITERAL}`, ...HEARD },
    about: ['CART'],
    tie: {
      id: 't1',
      claim: 'c1',
      question: 'closure',
      subject: 'p1',
      output: 'gap',
      test: { is: 'at least', value: -3, asWritten: '-3 kg' },
    },
    ...(CLOSURE.outs.gap ? { out: CLOSURE.outs.gap } : {}),
    decision: { word: 'holds', d: 2.8, u: 1.02, dof: null, rule: 'holds above 2 u' },
  },
  { claim: { id: 'c2', words: 'The seat is light', ...HEARD }, about: ['30-001'] },
];

/** One pixel of black as a portable network graphic. */
const PIXEL = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==',
  'base64',
);
const PHOTOS: ReportPhoto[] = [
  { caption: 'A pixel, drawn', mediaType: 'image/png', bytes: PIXEL },
  { caption: 'Half a file', mediaType: 'image/jpeg', bytes: new Uint8Array([255, 216, 255, 1]) },
];

/** Every branch of a report at once. */
export function everything(): ReportInput {
  const view = cart();
  return {
    view,
    rates: {
      id: 'r',
      version: 'R1',
      region: 'nowhere',
      date: '2026-01-01',
      currency: 'u',
      volumePerYear: 60000,
      years: 5,
      invented: true,
      cells: [],
    },
    date: '2026-11-25',
    answered: [
      { question: closure, subject: '', answer: CLOSURE },
      { question: rollUp, subject: '', answer: ROLL_UP },
      { question: silent, subject: '30-001 Seat', answer: answer(silent, []) },
      { question: madeUp, subject: '', answer: MADE_UP },
    ],
    notAnswered: [{ question: silent, subject: '60-001', why: 'nothing of it is known' }],
    claims: CLAIMS,
    map: mapDrawing(view, [
      { words: 'by the scales', sign: 'circle', x: 1.2, y: 0, z: 0.5 },
      { words: 'from the parts', sign: 'square', x: 1.3, y: 0 },
    ]),
    photos: PHOTOS,
  };
}
