import { type PlainInputs, question, type Solved } from '../method.ts';
import { PLATES } from '../sections.ts';
import { scalarsOf, size, stated } from './inputs.ts';
import { MODULUS, POISSON } from './material-inputs.ts';
import { exponents, finding, output, refused } from './outputs.ts';
import { bendingStiffness } from './skins.ts';

/** Bending and shear coefficients: w = α P l³ / D b + β P l / S, P the whole load. */
const CASES = [
  { ends: 'supported', load: 'central', bending: 1 / 48, shear: 1 / 4 },
  { ends: 'supported', load: 'even', bending: 5 / 384, shear: 1 / 8 },
  { ends: 'clamped', load: 'central', bending: 1 / 192, shear: 1 / 4 },
  { ends: 'clamped', load: 'even', bending: 1 / 384, shear: 1 / 8 },
] as const;
type Case = (typeof CASES)[number];

const NUMBERS = ['l', 'b', 't', 'core', 'modulus', 'poisson', 'coreShear', 'force'] as const;
type Numbers = Record<(typeof NUMBERS)[number], number>;

export default question({
  id: 'sandwich-plank',
  version: 1,
  title: 'Bending and core shear of a plank of two skins',
  wording: 'How far does a sandwich plank give way, and how hard is its core sheared?',
  subject: 'part',
  onRequest: true,
  section: PLATES,
  inputs: [
    size('l', 'l', 'span between the ends', [50, 6000]),
    size('b', 'b', 'width of the plank', [10, 3000]),
    size('t', 't', 'thickness of each skin', [0.2, 20]),
    size('core', 'c', 'height of the core between the skins', [1, 200]),
    MODULUS,
    { ...POISSON, meaning: 'Poisson ratio of the skins; 0 for a plank narrow enough to be a beam' },
    stated(
      {
        ...{ name: 'coreShear', symbol: 'Gc', kind: 'stress', unit: 'MPa', range: [0.5, 30000] },
        meaning: 'shear modulus of the core through its height, along the span',
        bounds: { above: 0 },
      },
      'not in the record: data sheet of the core, or a shear test of a piece',
    ),
    stated(
      {
        ...{ name: 'force', symbol: 'P', kind: 'force', unit: 'N', range: [0.1, 1e5] },
        meaning: 'whole load on the plank',
      },
      'not in the record: state the load',
    ),
    {
      in: 'term',
      name: 'ends',
      meaning: 'how both ends are held',
      options: ['supported', 'clamped'],
      where: 'not in the record: look at the joints at the ends',
      find: (at) => at.word(''),
    },
    {
      in: 'term',
      name: 'load',
      meaning: 'how the load lies: at mid-span, or even along the span',
      options: ['central', 'even'],
      where: 'not in the record: state the load',
      find: (at) => at.word(''),
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      output('w', 'w', 'length', 'mm', 'deflection at mid-span', 'w = wB + wS'),
      output(
        'bending',
        'wB',
        'length',
        'mm',
        'part of it by bending of the skins',
        'wB = α P l³ / (D b), α = 1/48, 5/384, 1/192 or 1/384',
      ),
      output(
        'shear',
        'wS',
        'length',
        'mm',
        'part of it by shear of the core',
        'wS = β P l / S, S = Gc b d² / c, d = c + t, β = 1/4 or 1/8',
      ),
      output('shearShare', 'wS/w', 'ratio', '%', 'share of the core in it', 'wS / w'),
      output(
        'coreStress',
        'τ',
        'stress',
        'MPa',
        'largest shear stress of the core',
        'τ = V / (b d), V = P / 2',
      ),
      output(
        'D',
        'D',
        'flexuralRigidity',
        'N.m',
        'bending stiffness for a width, skins alone',
        'D = E/(1 − ν²) (t³/6 + t d²/2)',
      ),
    ],
    solve,
  },
  modelError: {},
  sources: [
    {
      title: 'Allen, Analysis and Design of Structural Sandwich Panels, 1969',
      at: 'beams with antiplane cores: D, S = G b d²/c',
      status: 'from memory',
    },
    {
      title: 'Gibson and Ashby, Cellular Solids, 2nd edition 1997',
      at: 'sandwich beams: bending and shear deflection under common loads',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Two like isotropic skins, thin beside the core; the core is far softer and carries shear alone, evenly over its height.',
    'Plane sections of the whole turn and the core slides: skins do not bend by themselves at ends or under the load, nor dent the core.',
    'E/(1 − ν²) in D: a plank wide beside its depth. A Poisson ratio of 0 gives that of a narrow beam.',
    'Clamped: both skins are held so that the section cannot turn; an end held by one skin only gives way more.',
  ],
  cautions: [],
  checks: [
    {
      what: 'four cases against step by step integration of a beam that bends and shears; stiff core nears bending alone',
      source: 'Timoshenko’s beam equations by numbers, worked out independently',
      status: 'own inputs, published formula',
      test: 'test/published/sandwich-plank.test.ts',
    },
  ],
  example: {
    l: '1250 ± 2 mm',
    b: '200 ± 1 mm',
    t: '2 ± 0.05 mm',
    core: '10 ± 0.1 mm',
    modulus: '70 ± 1 GPa',
    poisson: '0.33 ± 0.01',
    coreShear: '40 ± 6 MPa',
    force: '500 ± 5 N',
    ends: 'supported',
    load: 'central',
  },
});

function solve(x: PlainInputs): Solved {
  const at = CASES.find((c) => c.ends === x.terms.ends && c.load === x.terms.load);
  if (!at) return notNamed(x);
  const s = scalarsOf(x, ...NUMBERS);
  const worked = bentAndSheared(s, at);
  return {
    outputs: {
      ...worked,
      w: worked.bending + worked.shear,
      shearShare: worked.shear / (worked.bending + worked.shear),
      D: stiffness(s),
    },
    findings: thickSkins(s),
    detail: exponentTable(s, at),
  };
}

const stiffness = ({ t, core, modulus, poisson }: Numbers): number =>
  bendingStiffness({ top: t, bottom: t, core, modulus, poisson });

function bentAndSheared(s: Numbers, { bending, shear }: Case) {
  const { l, b, core, force } = s;
  const d = core + s.t;
  return {
    bending: (bending * force * l ** 3) / (stiffness(s) * b),
    shear: (shear * force * l * core) / (s.coreShear * b * d * d),
    coreStress: force / (2 * b * d),
  };
}

/** How each number goes with the skins, the core held, and with the core, the skins held. */
function exponentTable(s: Numbers, at: Case) {
  const skins = exponents((f) => bentAndSheared({ ...s, t: s.t * f }, at));
  const core = exponents((f) => bentAndSheared({ ...s, core: s.core * f }, at));
  const form = `ends ${at.ends}, load ${at.load}`;
  const row = (words: string, of: keyof typeof skins) => [words, form, skins[of], core[of]];
  return {
    title: 'Forms used, and exponents',
    columns: [
      { name: 'quantity' },
      { name: 'form' },
      { name: 'exponent of the skins' },
      { name: 'exponent of the core’s height' },
    ],
    rows: [row('bending', 'bending'), row('shear', 'shear'), row('core stress', 'coreStress')],
  };
}

function notNamed(x: PlainInputs): Solved {
  const isEnds = !CASES.some((c) => c.ends === x.terms.ends);
  return isEnds
    ? refused(
        'ends-not-named',
        'ends',
        'it is not said how the ends are held',
        'Give supported or clamped.',
      )
    : refused(
        'load-not-named',
        'load',
        'it is not said how the load lies',
        'Give central or even.',
      );
}

/** Skins thin beside the core: d/t above 5.77 keeps their own bending under a hundredth (Allen, from memory). */
function thickSkins({ t, core }: Numbers) {
  if (!((core + t) / t < 5.77)) return [];
  return [
    finding(
      'note',
      'thick-skins',
      't',
      'the skins are thick beside the core: they carry part of the shear, and the plank is stiffer than this',
      'Take the shear part as an upper bound.',
    ),
  ];
}
