import type { Id } from '../../study/index.ts';
import { LINES } from '../cost/alternatives/alternative-columns.ts';
import { type DesignFigures, figuresOf } from '../cost/alternatives/design-lines.ts';
import { shared, undirected } from '../cost/shared-inputs.ts';
import {
  type DetailTable,
  type Finder,
  type PlainInputs,
  question,
  type ScalarInput,
  type Solved,
} from '../method.ts';
import { SEALING } from '../sections.ts';
import { output, refused } from '../structure/outputs.ts';
import { lidInputs } from './lid-inputs.ts';
import { held, type Lid, lift, pressed } from './line-load.ts';

/** The joint that the designs are alternatives of. */
const jointOf = (at: Finder): Id => at.node(at.text(at.subject, 'seal.joint').text) ?? '';
/** The design below the subject whose fastener presses by itself: a clip with its force. */
const otherOf = (at: Finder): Id | undefined =>
  at.view
    .children(at.subject)
    .find((n) => n.kind === 'alternative' && at.view.properties(n.id).includes('seal.force'))?.id;

const ofOther = (
  input: Pick<ScalarInput, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range'>,
  property: string,
): ScalarInput => ({
  in: 'scalar',
  ...input,
  bounds: { above: 0 },
  where: `${input.meaning}, of the design below the subject that has a force of its fastener`,
  find: (at) => {
    const other = otherOf(at);
    return other === undefined
      ? at.missing(input.meaning, 'no design has the force of its fastener')
      : at.number(other, property);
  },
});

/** Plates by face and thickness are no fastenings: those are asked of alternative-costs. */
const OF_PLATES = new Set(['face', 'thickness', 'core', 'modulus', 'poisson', 'density']);
const LID_LINES = { ...LINES, columns: LINES.columns.filter(({ name }) => !OF_PLATES.has(name)) };

/** Inputs of the lid that this question rests on, of the joint that the designs are for. */
const LID = lidInputs(jointOf).filter(({ name }) => name !== 'cornerPitch' && name !== 'force');

export default question({
  id: 'lid-choice',
  version: 1,
  title: 'Clips instead of screws on a lid',
  wording:
    'What do clips instead of screws change in cost, time, line load, crossings and pressure?',
  subject: 'alternative',
  section: SEALING,
  inputs: [
    {
      in: 'term',
      name: 'other',
      meaning: 'design with clips, by its name',
      where: 'the design below the subject that has a force of its fastener',
      find: (at) => at.word(at.view.node(otherOf(at) ?? '')?.name ?? ''),
    },
    LID_LINES,
    undirected(shared('labour', '30 / 36 / 44 {u}/h')),
    undirected(shared('volume', 'exactly 60000')),
    undirected(shared('years', 'exactly 5')),
    undirected(shared('overhead', '1.14 / 1.18 / 1.24')),
    ...LID,
    ofOther(
      {
        ...{ name: 'clipForce', symbol: 'F_k', kind: 'force', unit: 'N' },
        ...{ meaning: 'force of one clip', range: [1, 2000] },
      },
      'seal.force',
    ),
    ofOther(
      {
        ...{ name: 'clips', symbol: 'n_k', kind: 'count', unit: '1' },
        ...{ meaning: 'clips', range: [2, 500] },
      },
      'fastening.count',
    ),
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        ...output('cost', 'd', 'money', '{u}', 'cost that clips save', 'd = C₀ − C₁'),
        decides: 'difference',
        directions: { more: 'clips are cheaper', less: 'clips are dearer' },
      },
      {
        ...output('time', 'Δt', 'time', 's', 'time to assemble that clips save', 'Δt = t₀ − t₁'),
        decides: 'difference',
        directions: { more: 'clips are quicker', less: 'clips are slower' },
      },
      {
        ...output(
          ...(['service', 'Δt_S', 'time', 's'] as const),
          'time in service that clips save',
          'Δt_S = t_S₀ − t_S₁',
        ),
        decides: 'difference',
        directions: { more: 'clips are quicker', less: 'clips are slower' },
      },
      output(
        ...(['crossings', 'Δx', 'ratio', '1'] as const),
        'leak crossings that clips save',
        'Δx = x₀ − x₁',
      ),
      output(
        ...(['screwLoad', 'q₁', 'lineLoad', 'N/mm'] as const),
        'least line load with the screws and their limiters',
        'as seal-line-load',
      ),
      {
        ...output(
          ...(['screwMargin', 'm₁', 'lineLoad', 'N/mm'] as const),
          'of this, over the demand of the gasket',
          'm₁ = q₁ − q_d',
        ),
        decides: 'margin',
      },
      output(
        ...(['clipLoad', 'q₂', 'lineLoad', 'N/mm'] as const),
        'least line load with the clips',
        'q₂ = F_k n_k ψ / U',
      ),
      {
        ...output(
          ...(['clipMargin', 'm₂', 'lineLoad', 'N/mm'] as const),
          'of this, over the demand of the gasket',
          'm₂ = q₂ − q_d',
        ),
        decides: 'margin',
      },
      {
        ...output(
          ...(['screwPressure', 'm₃', 'lineLoad', 'N/mm'] as const),
          'with the screws, over the demand when the vents open',
          'm₃ = q₀ − (q₀ + p A / U) (1 − q₁ / q₀) − q_d',
        ),
        decides: 'margin',
      },
      {
        ...output(
          ...(['clipPressure', 'm₄', 'lineLoad', 'N/mm'] as const),
          'with the clips, over the demand when the vents open',
          'm₄ = q₂ − p A / U − q_d',
        ),
        decides: 'margin',
      },
      output(
        ...(['opens', 'p₁', 'pressureDiff', 'kPa'] as const),
        'pressure inside at which the clips’ line load is down to the demand',
        'p₁ = (q₂ − q_d) U / A',
      ),
    ],
    solve,
  },
  modelError: {
    screwLoad: { relative: 0.1, sharedFraction: 0.7 },
    clipLoad: { relative: 0.1, sharedFraction: 0.7 },
  },
  sources: [
    { title: 'Hetényi, Beams on Elastic Foundation, 1946', status: 'from memory' },
    {
      title: 'Sum of lines by piece, mass, time, area and tools',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Costs, times and crossings are those of alternative-costs; line loads those of seal-line-load.',
    'A clip presses with its force, evenly spaced along the seal; it does not hold the flange at a height as a limiter does. ψ is the least load between clips over the mean.',
    'The lid is lifted evenly along its edge by the pressure inside.',
  ],
  cautions: ['sealed-by-judgement', 'pressure-test'],
  checks: [
    {
      what: 'costs against alternative-costs, line loads against seal-line-load; the clips’ load and the pressure that opens them by hand',
      source: 'own inputs',
      status: 'own inputs, published formula',
      test: 'test/engine/sealing/lid.test.ts',
    },
  ],
  example: {
    other: 'clips',
    lines: [
      {
        ...{ design: 'screws', line: 'screws', pieces: 'exactly 62', price: '0.05 ± 0.003 {u}' },
        ...{ time: '4.6 ± 0.3 s', service: '3.5 ± 0.3 s' },
      },
      {
        ...{ design: 'clips', line: 'clips', pieces: 'exactly 58', price: '0.12 ± 0.007 {u}' },
        ...{ time: '2.4 ± 0.15 s', service: '2 ± 0.2 s', tool: '9000 ± 900 {u}' },
        toolLife: 'exactly 299000',
      },
      {
        ...{ design: 'clips', line: 'clip seats', mass: '0.2 ± 0.01 kg', gross: '1.1 ± 0.02' },
        ...{ materialPrice: '4.2 ± 0.3 {u}/kg', conversion: '1 ± 0.1 {u}/kg' },
        ...{ machineTime: '4 ± 0.4 s', machineRate: '75 ± 6 {u}/h', crossings: 'exactly 1' },
      },
      {
        ...{ design: 'every design', line: 'cord', price: '3 ± 0.2 {u}', crossings: 'exactly 1' },
        ...{ coated: '0.2 ± 0.02 m2', coatPrice: '2.4 ± 0.2 {u}/m2' },
      },
    ],
    labour: '30 / 36 / 44 {u}/h',
    volume: 'exactly 60000',
    years: 'exactly 5',
    overhead: '1.14 / 1.18 / 1.24',
    pitch: '89 ± 0.5 mm',
    perimeter: '5.54 ± 0.01 m',
    area: '1.8 ± 0.02 m2',
    width: '28 ± 0.2 mm',
    thickness: '2.6 ± 0.05 mm',
    modulus: '10 ± 0.5 GPa',
    free: '8 ± 0.1 mm',
    squeezed: '5.6 ± 0.1 mm',
    rest: '1.8 ± 0.4 N/mm',
    demand: '1 ± 0.2 N/mm',
    pressure: '8 ± 2 kPa',
    clipForce: '210 ± 15 N',
    clips: '58',
  },
});

function solve(x: PlainInputs): Solved {
  const designs = figuresOf({ ...x, terms: { ...x.terms, sizing: '' } });
  const [built] = designs;
  const other = designs.find((d) => d.name === x.terms.other);
  if (!built || !other || other === built)
    return refused(
      'no-other-design',
      'other',
      'no design of this name stands beside the one as built',
      'Give the design with clips its lines, and the force of its fastener.',
      x.terms.other,
    );
  const loads = loadsOf(x);
  return {
    outputs: { ...loads, ...saved(built, other) },
    detail: sideBySide(built, other, loads),
  };
}

const saved = (built: DesignFigures, other: DesignFigures): Record<string, number> => ({
  cost: built.cost - other.cost,
  time: built.time - other.time,
  service: built.service - other.service,
  crossings: built.crossings - other.crossings,
});

function loadsOf({ scalars }: PlainInputs): Record<string, number> {
  const of = (name: string): number => scalars[name] ?? Number.NaN;
  const screws: Lid = {
    ...{ pitch: of('pitch'), cornerPitch: of('pitch'), perimeter: of('perimeter') },
    ...{ area: of('area'), width: of('width'), thickness: of('thickness') },
    ...{ modulus: of('modulus'), free: of('free'), squeezed: of('squeezed') },
    ...{ rest: of('rest'), demand: of('demand'), pressure: of('pressure'), force: 0 },
  };
  const clips: Lid = { ...screws, pitch: of('perimeter') / of('clips'), force: of('clipForce') };
  const [screwLoad, clipLoad, up] = [held(screws, screws.pitch, 0), pressed(clips), lift(screws)];
  const { demand } = screws;
  return {
    ...{ screwLoad, screwMargin: screwLoad - demand, clipLoad, clipMargin: clipLoad - demand },
    screwPressure: held(screws, screws.pitch, up) - demand,
    clipPressure: clipLoad - up - demand,
    opens: ((clipLoad - demand) * screws.perimeter) / screws.area,
  };
}

function sideBySide(
  built: DesignFigures,
  other: DesignFigures,
  loads: Readonly<Record<string, number>>,
): DetailTable {
  const load = (name: string): number => loads[name] ?? Number.NaN;
  return {
    title: 'Side by side',
    columns: [
      { name: 'design' },
      { name: 'cost', kind: 'money', unit: '{u}' },
      { name: 'time to assemble', kind: 'time', unit: 's' },
      { name: 'time in service', kind: 'time', unit: 's' },
      { name: 'leak crossings', kind: 'count' },
      { name: 'least line load', kind: 'lineLoad', unit: 'N/mm' },
      { name: 'over the demand when the vents open', kind: 'lineLoad', unit: 'N/mm' },
    ],
    rows: [
      [
        ...[built.name, built.cost, built.time, built.service, built.crossings],
        ...[load('screwLoad'), load('screwPressure')],
      ],
      [
        ...[other.name, other.cost, other.time, other.service, other.crossings],
        ...[load('clipLoad'), load('clipPressure')],
      ],
    ],
  };
}
