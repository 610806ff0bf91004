import { type Finder, question, type ScalarColumn, type ScalarInput } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { jointCount, jointsOf, jointTable, jointType } from './joint-columns.ts';
import { estimatedTime, orNone, stopwatchTime, usedTime } from './joint-times.ts';

const timeColumn = (
  name: string,
  symbol: string,
  meaning: string,
  where: string,
  find: ScalarColumn['find'],
): ScalarColumn => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'time',
  unit: 's',
  meaning,
  range: [0, 3600],
  bounds: { atLeast: 0 },
  where,
  find,
});

/** Different tools of the joints: one change for each beyond the first. */
function toolChanges(at: Finder): number {
  const tools = new Set(jointsOf(at).map((id) => at.text(id, 'tool').text));
  tools.delete('');
  return Math.max(0, tools.size - 1);
}

const vehicleOf = (at: Finder): string => at.view.root()?.id ?? at.subject;

const count = (
  name: string,
  symbol: string,
  meaning: string,
  where: string,
  find: ScalarInput['find'],
): ScalarInput => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'count',
  unit: '1',
  meaning,
  range: [0, 1000],
  bounds: { atLeast: 0 },
  where,
  find,
});

const time = (
  name: string,
  symbol: string,
  meaning: string,
  where: string,
  find: ScalarInput['find'],
): ScalarInput => ({
  ...count(name, symbol, meaning, where, find),
  kind: 'time',
  unit: 's',
});

export default question({
  id: 'work-content',
  version: 1,
  title: 'Work of putting the joints in',
  wording: 'How much work is it to put the joints in, with tool changes and lift aids?',
  subject: 'study',
  section: CENSUS,
  uses: ['element-time', 'run-down-time'],
  inputs: [
    jointTable(
      jointCount,
      timeColumn(
        'each',
        't',
        'time of one element',
        'stopwatch; else predetermined element times and run-down; else as recorded',
        usedTime,
      ),
      timeColumn(
        'stopwatch',
        't↻',
        'the same by stopwatch; zero where none was held',
        'time by stopwatch of the joint',
        (at, row) => stopwatchTime(at, row) ?? at.exact(0, 'no stopwatch was held'),
      ),
      timeColumn(
        'estimate',
        't~',
        'its estimate, where a stopwatch was held; else zero',
        'element times and run-down, or as recorded',
        (at, row) =>
          stopwatchTime(at, row)
            ? estimatedTime(at, row)
            : at.exact(0, 'no stopwatch was held against it'),
      ),
      timeColumn(
        'hold',
        'tₕ',
        'time to hold or cure, each',
        'time to hold or cure of the joint; none where none is recorded',
        (at, row) => orNone(at, row, 'time.hold', 'nothing to hold or cure is recorded'),
      ),
      jointType,
    ),
    count('changes', 'k', 'changes of tool', 'different tools of the joints, less one', (at) =>
      at.exact(toolChanges(at), 'different tools of the joints, less one'),
    ),
    time(
      'change',
      'tₖ',
      'time to change the tool',
      'time to change the tool, of the vehicle; none is asked for without a change',
      (at) =>
        toolChanges(at) === 0
          ? at.exact(0, 'no change of tool')
          : at.number(vehicleOf(at), 'toolChange.time'),
    ),
    count('lifts', 'q', 'uses of a lift aid', 'uses of a lift aid, of the vehicle', (at) =>
      orNone(at, vehicleOf(at), 'liftAid.uses', 'no use of a lift aid is recorded'),
    ),
    time(
      'lift',
      't_q',
      'time of one use of a lift aid',
      'time of a lift aid, of the vehicle',
      (at) =>
        hasLifts(at)
          ? at.number(vehicleOf(at), 'liftAid.time')
          : at.exact(0, 'no use of a lift aid is recorded'),
    ),
  ],
  body: {
    body: 'tally',
    table: 'joints',
    groupBy: 'type',
    terms: [
      {
        name: 'hands',
        symbol: 'T₁',
        kind: 'time',
        shown: 'Σ n t',
        needs: ['count', 'each'],
        each: (n, t) => n * t,
      },
      {
        name: 'hold',
        symbol: 'Tₕ',
        kind: 'time',
        shown: 'Σ n tₕ',
        needs: ['count', 'hold'],
        each: (n, t) => n * t,
      },
      {
        name: 'difference',
        symbol: 'Δ',
        kind: 'time',
        shown: 'Σ n (t↻ − t~)',
        needs: ['count', 'stopwatch', 'estimate'],
        each: (n, watch, estimate) => n * (watch - estimate),
      },
    ],
    outputs: [
      {
        name: 'content',
        symbol: 'T',
        kind: 'time',
        unit: 'min',
        meaning: 'work with tool changes and lift aids, without allowance',
        shown: 'T = T₁ + k tₖ + q t_q',
        of: (hands, _hold, _d, k, tk, q, tq) => hands + k * tk + q * tq,
      },
      {
        name: 'hands',
        symbol: 'T₁',
        kind: 'time',
        unit: 'min',
        meaning: 'handwork and turning',
        shown: 'T₁ = Σ n t',
        of: (hands) => hands,
      },
      {
        name: 'handling',
        symbol: 'T₂',
        kind: 'time',
        unit: 's',
        meaning: 'tool changes and lift aids',
        shown: 'T₂ = k tₖ + q t_q',
        of: (_h, _hold, _d, k, tk, q, tq) => k * tk + q * tq,
      },
      {
        name: 'hold',
        symbol: 'Tₕ',
        kind: 'time',
        unit: 'min',
        meaning: 'holding and curing, one after the other, not in the work',
        shown: 'Tₕ = Σ n tₕ',
        of: (_h, hold) => hold,
      },
      {
        name: 'difference',
        symbol: 'Δ',
        kind: 'time',
        unit: 's',
        meaning: 'stopwatch less estimate, where a stopwatch was held',
        shown: 'Δ = Σ n (t↻ − t~)',
        decides: 'difference',
        of: (_h, _hold, d) => d,
      },
    ],
  },
  modelError: {},
  sources: [
    {
      title: 'Sum of element times; a reading by stopwatch goes before any estimate',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'One person, one joint after the other, each tool taken up once; pace and allowance are not in it.',
    'Lift aids are used as often as recorded; where nothing is recorded none is used.',
    'A stopwatch reading counts as read at normal pace unless it was levelled before.',
  ],
  cautions: ['lifting-by-hand'],
  checks: [
    {
      what: 'a stopwatch reading goes in the place of the estimate, and the difference is n times theirs',
      source: 'own inputs, sums worked by hand',
      status: 'own inputs, published formula',
      test: 'test/published/allowances.test.ts',
    },
  ],
  example: {
    joints: [
      {
        count: '62',
        each: '4.6 ± 0.5 s',
        stopwatch: '0 s',
        estimate: '0 s',
        hold: '0 s',
        type: 'screw',
      },
      {
        count: '18',
        each: '9.6 ± 0.4 s',
        stopwatch: '9.6 ± 0.4 s',
        estimate: '8.7 ± 1.2 s',
        hold: '10 ± 1 s',
        type: 'bolt',
      },
    ],
    changes: '1',
    change: '6 ± 1.5 s',
    lifts: '2',
    lift: '40 ± 8 s',
  },
});

const hasLifts = (at: Finder): boolean =>
  at.view.properties(vehicleOf(at)).includes('liftAid.uses');
