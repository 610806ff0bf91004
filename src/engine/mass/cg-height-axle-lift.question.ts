import type { Finding } from '../../study/index.ts';
import { type PlainInputs, question } from '../method.ts';
import { BALANCE } from '../sections.ts';
import { WHEELBASE } from './corner-loads.ts';

const CORNERS = ['FL', 'FR', 'RL', 'RR'] as const;
/** Angles that ISO 10392 recommends at the least. */
const ANGLES_RECOMMENDED = 3;

export default question({
  id: 'cg-height-axle-lift',
  version: 1,
  title: 'Height of the centre of gravity by axle lift',
  wording: 'How high is the centre of gravity, by raising one axle?',
  subject: 'study',
  section: BALANCE,
  inputs: [
    {
      in: 'table',
      name: 'lifts',
      meaning: 'one angle of the axle lift',
      where: 'trials of the vehicle with a lift angle',
      rows: (at) =>
        at.view
          .nodes('trial', at.subject)
          .filter((n) => at.view.properties(n.id).includes('liftAngle'))
          .map((n) => n.id),
      columns: [
        {
          in: 'scalar',
          name: 'angle',
          symbol: 'θ',
          kind: 'angle',
          unit: 'deg',
          meaning: 'lift angle of the vehicle',
          range: [2, 25],
          bounds: { above: 0, below: 90 },
          where: 'lift angle of the trial',
          find: (at, row) => at.number(row, 'liftAngle'),
        },
        {
          in: 'scalar',
          name: 'gain',
          symbol: 'ΔF',
          kind: 'mass',
          unit: 'kg',
          meaning: 'load gained by the axle left on the ground',
          range: [0, 400],
          where: 'front load gain of the trial',
          find: (at, row) => at.number(row, 'frontLoadGain'),
        },
      ],
    },
    {
      in: 'scalar',
      name: 'mass',
      symbol: 'm',
      kind: 'mass',
      unit: 'kg',
      meaning: 'mass of the vehicle',
      range: [300, 8000],
      bounds: { above: 0 },
      where: 'sum of the corner loads',
      find: (at) =>
        at.sum(
          'mass on the corner scales',
          CORNERS.map((c) => at.number(at.subject, `cornerLoad.${c}`)),
        ),
    },
    WHEELBASE,
    {
      in: 'scalar',
      name: 'radius',
      symbol: 'r',
      kind: 'length',
      unit: 'mm',
      meaning: 'loaded tyre radius, both axles',
      range: [200, 600],
      bounds: { above: 0 },
      where: 'loaded tyre radius of the vehicle',
      find: (at) => at.number(at.subject, 'tyreRadius'),
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      {
        name: 'slope',
        symbol: 'b',
        kind: 'mass',
        unit: 'kg',
        meaning: 'load gained over the tangent of the angle',
        shown: 'b = Σ ΔF tan θ / Σ tan² θ',
        step: true,
      },
      {
        name: 'height',
        symbol: 'h',
        kind: 'length',
        unit: 'mm',
        meaning: 'height of the centre of gravity over the ground',
        shown: 'h = L b / m + r',
        alike: 'z',
      },
    ],
    solve: ({ tables, scalars }) => {
      const slope = slopeThroughOrigin(tables.lifts ?? []);
      const { mass = Number.NaN, wheelbase = Number.NaN, radius = Number.NaN } = scalars;
      return { outputs: { slope, height: (wheelbase * slope) / mass + radius } };
    },
  },
  valid: fewAngles,
  modelError: {},
  sources: [
    {
      title: 'ISO 10392:2011, Road vehicles – Determination of centre of gravity',
      at: '6.2.2 to 6.2.6: axle lift, three or more angles, load against the tangent of the angle',
      status: 'published',
    },
  ],
  assumptions: [
    'Suspension blocked and fluids at rest: otherwise the mass moves while the vehicle is raised.',
    'Both axles have the same loaded radius; the angle is that of the vehicle, not a lift of one wheel over the wheelbase.',
    'The line of load against tan θ passes through the origin; all angles count alike.',
  ],
  cautions: ['axle-lift', 'hoist-balance'],
  checks: [
    {
      what: 'height at 5, 10 and 15 degrees, and its spread at 10 degrees',
      source: 'ISO 10392:2011 axle lift formula (seen), own inputs, against plane statics',
      status: 'own inputs, published formula',
      test: 'test/published/iso-10392.test.ts',
    },
  ],
  example: {
    lifts: [
      { angle: '5 ± 0.1 °', gain: '12.754 ± 0.5 kg' },
      { angle: '10 ± 0.1 °', gain: '25.705 ± 0.5 kg' },
      { angle: '15 ± 0.1 °', gain: '39.061 ± 0.5 kg' },
    ],
    mass: '1640 ± 1 kg',
    wheelbase: '2700 ± 2 mm',
    radius: '310 ± 3 mm',
  },
});

/** Least-squares slope of load against tan θ through the origin; NaN without a lift. */
function slopeThroughOrigin(lifts: PlainInputs['tables'][string]): number {
  let [top, bottom] = [0, 0];
  for (const { angle, gain } of lifts) {
    const t = Math.tan(Number(angle));
    top += Number(gain) * t;
    bottom += t * t;
  }
  return top / bottom;
}

function fewAngles(x: PlainInputs): readonly Finding[] {
  const n = (x.tables.lifts ?? []).length;
  if (n === 0 || n >= ANGLES_RECOMMENDED) return [];
  return [
    {
      code: 'few-lift-angles',
      level: 'doubt',
      place: { property: 'lifts' },
      value: String(n),
      what: `${n} lift angle${n === 1 ? '' : 's'}; ISO 10392 recommends three or more`,
      next: 'Add angles, and read the loads going up and coming down.',
    },
  ];
}
