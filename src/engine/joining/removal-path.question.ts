import {
  type DetailTable,
  type Finder,
  type OutputSpec,
  type PlainInputs,
  question,
  type TallyBody,
} from '../method.ts';
import { CENSUS } from '../sections.ts';
import { STEP_COLUMNS } from './removal-columns.ts';
import { lookAtWay } from './removal-figure.ts';
import { wayFindings } from './removal-notes.ts';
import { wayIn } from './removal-plan.ts';

/** The steps of the quickest way, in order; what is to be said of it is noted. */
function stepsOf(at: Finder): readonly string[] {
  const findings = wayFindings(at);
  for (const finding of findings) at.note(finding);
  if (findings.some((f) => f.code === 'no-target')) return [];
  return wayIn(at).planned.best?.steps.map((s) => s.id) ?? [];
}

type Term = TallyBody['terms'][number];
const term = (
  name: string,
  symbol: string,
  kind: Term['kind'],
  shown: string,
  needs: readonly string[],
  each: Term['each'],
): Term => ({ name, symbol, kind, shown, needs, each });

type Output = OutputSpec & { readonly of: (...x: number[]) => number };
const out = (
  name: string,
  symbol: string,
  kind: Output['kind'],
  unit: string,
  meaning: string,
  shown: string,
  of: Output['of'],
): Output => ({ name, symbol, kind, unit, meaning, shown, of });

export default question({
  id: 'removal-path',
  version: 1,
  title: 'Way to a part',
  wording: 'What is the quickest way to take it off, and what does it take?',
  subject: 'study',
  onRequest: true,
  section: CENSUS,
  inputs: [
    {
      in: 'term',
      name: 'locked',
      meaning: 'joints or steps that can not be opened, by number, e.g. "J103 J604"',
      where: 'those whose state says seized, locked or sheared; more may be named',
      find: (at) => at.word(at.given('locked')),
    },
    {
      in: 'table',
      name: 'steps',
      meaning: 'one thing to undo, do or take off, in order',
      where: 'joints that hold it, what stands in the way of them, and so on',
      rows: stepsOf,
      columns: STEP_COLUMNS,
    },
    {
      in: 'scalar',
      name: 'change',
      symbol: 'tₖ',
      kind: 'time',
      unit: 's',
      meaning: 'time to change the tool',
      range: [0, 600],
      bounds: { atLeast: 0 },
      where: 'time to change the tool, of the vehicle; none is asked for without a change',
      find: (at) =>
        wayIn(at).changes.size === 0
          ? at.exact(0, 'no change of tool')
          : at.number(at.view.root()?.id ?? '', 'toolChange.time'),
    },
    {
      in: 'scalar',
      name: 'labour',
      symbol: 'ω',
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
    body: 'tally',
    table: 'steps',
    terms: [
      term('hands', 'T₁', 'time', 'Σ n s t', ['count', 'share', 'undo'], (n, s, t) => n * s * t),
      term(
        'work',
        'W₁',
        'time',
        'Σ n s t p',
        ['count', 'share', 'undo', 'people'],
        (n, s, t, p) => n * s * t * p,
      ),
      term(
        'back',
        'W₂',
        'time',
        'Σ n s t′ p',
        ['count', 'share', 'refit', 'people'],
        (n, s, t, p) => n * s * t * p,
      ),
      term('changes', 'K', 'count', 'Σ k', ['change'], (k) => k),
      term('tools', 'N_w', 'count', 'Σ w', ['newTool'], (w) => w),
      term(
        'renewed',
        'N_e',
        'count',
        'Σ n s e',
        ['count', 'share', 'renewed'],
        (n, s, e) => n * s * e,
      ),
      term(
        'renewals',
        'Q',
        'money',
        'Σ n s q',
        ['count', 'share', 'price'],
        (n, s, q) => n * s * q,
      ),
      term('steps', 'Z', 'count', 'Σ 1', [], () => 1),
    ],
    outputs: [
      out(
        'time',
        'T',
        'time',
        'min',
        'time to take it off, with tool changes',
        'T = T₁ + K tₖ',
        (hands, _w, _b, k, _t, _e, _q, _z, change) => hands + k * change,
      ),
      out('hands', 'T₁', 'time', 's', 'of this, undoing and taking off', 'T₁ = Σ n s t', (h) => h),
      out(
        'cost',
        'C',
        'money',
        '{u}',
        'cost of taking it off: labour, and what can not be used again',
        'C = ω (W₁ + K tₖ) + Q',
        (_h, work, _b, k, _t, _e, q, _z, change, rate) => rate * (work + k * change) + q,
      ),
      out(
        'labour',
        'C₁',
        'money',
        '{u}',
        'of this, labour',
        'C₁ = ω (W₁ + K tₖ)',
        (_h, work, _b, k, _t, _e, _q, _z, change, rate) => rate * (work + k * change),
      ),
      out(
        'renewals',
        'Q',
        'money',
        '{u}',
        'of this, what is renewed',
        'Q = Σ n s q',
        (_h, _w, _b, _k, _t, _e, q) => q,
      ),
      out(
        'refit',
        'C₂',
        'money',
        '{u}',
        'labour of putting it back',
        'C₂ = ω (W₂ + K tₖ)',
        (_h, _w, back, k, _t, _e, _q, _z, change, rate) => rate * (back + k * change),
      ),
      out(
        'steps',
        'Z',
        'count',
        '1',
        'steps of the way',
        'Z = Σ 1',
        (_h, _w, _b, _k, _t, _e, _q, z) => z,
      ),
      out('tools', 'N_w', 'count', '1', 'different tools', 'N_w = Σ w', (_h, _w, _b, _k, t) => t),
      out('changes', 'K', 'count', '1', 'changes of tool', 'K = Σ k', (_h, _w, _b, k) => k),
      out(
        'renewed',
        'N_e',
        'count',
        '1',
        'fasteners to be renewed',
        'N_e = Σ n s e',
        (_h, _w, _b, _k, _t, e) => e,
      ),
    ],
    detail: stepTable,
  },
  look: lookAtWay,
  modelError: {},
  sources: [
    {
      title: 'A. B. Kahn, Topological sorting of large networks (1962): order of the steps',
      status: 'from memory',
    },
    {
      title: 'A part comes off when all that holds it and all that stands in its way is undone',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'A joint is undone in the time it takes to reach and drive it unless a time to undo it is recorded; one person unless more are.',
    'Of a group of joints that holds several parts alike, the share on what comes off is opened; one that lists as many ends on both sides holds them in pairs, in the order listed.',
    'Of alternatives the one that adds least time is taken, each alternative looked at for itself.',
    'What hangs on by a joint that is locked or would be destroyed comes along, unless it stays on the hoist.',
    'Joints between groups that nobody recorded are not seen: look before pulling.',
  ],
  cautions: ['hoist-balance', 'high-voltage', 'lifting-by-hand'],
  checks: [
    {
      what: 'orders and least sets of steps of small graphs by trying every set, and of large ones against a general-purpose graph library',
      source: 'own inputs; exhaustive search and topological generations of graphology',
      status: 'own inputs, published formula',
      test: 'test/engine/joining/removal-graph.test.ts',
    },
  ],
  example: {
    locked: 'J9',
    steps: [
      {
        count: '2',
        share: '1',
        undo: '4.6 ± 0.7 s',
        refit: '4.6 ± 0.7 s',
        people: '2',
        change: '0',
        newTool: '1',
        renewed: '0',
        price: '0 {u}',
        doing: 'J1 connector',
        tool: 'hand',
        onRemoval: 'reusable',
        fluid: '',
        after: '',
        ifLocked: 'no other way',
      },
      {
        count: '18',
        share: '1',
        undo: '8.7 ± 1.3 s',
        refit: '9.5 ± 1.3 s',
        people: '1',
        change: '1',
        newTool: '1',
        renewed: '1',
        price: '0.62 ± 0.07 {u}',
        doing: 'J2 bolt M12x90 10.9',
        tool: 'socket 18 mm',
        onRemoval: 'renew fastener',
        fluid: '',
        after: '',
        ifLocked: 'no other way',
      },
    ],
    change: '6 ± 1.5 s',
    labour: '30 / 36 / 44 {u}/h',
  },
});

function stepTable({ tables, scalars }: PlainInputs): DetailTable {
  return {
    title: 'Steps in order',
    columns: [
      { name: 'step', kind: 'count' },
      { name: 'what' },
      { name: 'elements', kind: 'count' },
      { name: 'tool' },
      { name: 'time', kind: 'time', unit: 's' },
      { name: 'people', kind: 'count' },
      { name: 'on removal' },
      { name: 'cost', kind: 'money', unit: '{u}' },
      { name: 'fluid' },
      { name: 'after' },
      { name: 'if locked' },
    ],
    rows: (tables.steps ?? []).map((row, i) => {
      const elements = Number(row.count) * Number(row.share);
      const time = elements * Number(row.undo);
      const labour = Number(scalars.labour) * time * Number(row.people);
      const shown = (x: number): number | string => (Number.isNaN(x) ? 'not known' : x);
      return [
        i + 1,
        String(row.doing),
        shown(elements),
        String(row.tool),
        shown(time),
        shown(Number(row.people)),
        String(row.onRemoval),
        shown(labour + elements * Number(row.price)),
        String(row.fluid),
        String(row.after),
        String(row.ifLocked),
      ];
    }),
  };
}
