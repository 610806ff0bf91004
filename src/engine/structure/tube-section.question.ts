import { type PlainInputs, question, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { scalarsOf, size } from './inputs.ts';
import { DENSITY_OR_STEEL } from './material-inputs.ts';
import { exponents, formsTable, output, refused } from './outputs.ts';
import type { Shape } from './point.ts';
import { roundedRectangle } from './profiles.ts';
import { sectionFigures, YZ } from './section-figure.ts';
import { AREA, MASS } from './section-outputs.ts';

const FORM = 'closed round tube, exact ring: It = 2 I';

export default question({
  id: 'tube-section',
  version: 1,
  title: 'Round tube or bar',
  wording: 'How stiff is a round tube or bar in bending and in torsion?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    size('d', 'D', 'outer diameter', [1, 500], 'envelope.height'),
    size('t', 't', 'wall thickness; half the diameter for a solid bar', [0.2, 100], 'thickness'),
    DENSITY_OR_STEEL,
  ],
  body: {
    body: 'solve',
    outputs: [
      { ...AREA, shown: 'A = π (D² − d²) / 4, d = D − 2 t' },
      output(
        'I',
        'I',
        'secondMoment',
        'cm4',
        'second moment of area about any diameter',
        'I = π (D⁴ − d⁴) / 64',
      ),
      output('Wel', 'Wel', 'sectionModulus', 'cm3', 'elastic section modulus', 'Wel = 2 I / D'),
      output(
        'Wpl',
        'Wpl',
        'sectionModulus',
        'cm3',
        'plastic section modulus',
        'Wpl = (D³ − d³) / 6',
      ),
      output('It', 'It', 'secondMoment', 'cm4', 'torsion constant, closed round tube', 'It = 2 I'),
      MASS,
    ],
    solve,
  },
  figures: (x, outs) => (outs.area ? sectionFigures(tubeShape(scalarsOf(x, 'd', 't')), YZ) : []),
  modelError: {},
  sources: [
    { title: 'Moments of a circular ring, closed form', status: 'common practice, no source' },
  ],
  assumptions: [
    'Round, of even wall, without a slit: a slit tube is an open section and far softer in torsion.',
    'The torsion constant is the exact one of a closed ring, not Bredt’s thin wall.',
  ],
  cautions: [],
  checks: [
    {
      what: 'tube against a polygon of many sides and against Bredt’s formula for a thin wall',
      source: 'closed forms',
      status: 'own inputs, published formula',
      test: 'test/published/saint-venant-torsion.test.ts',
    },
  ],
  example: { d: '28 ± 0.05 mm', t: '3 ± 0.05 mm', density: '7850 ± 40 kg/m3' },
});

/** Outline and bore as polygons, to be drawn. */
const tubeShape = ({ d, t }: { readonly d: number; readonly t: number }): Shape => {
  const bore = d - 2 * t;
  return {
    outline: roundedRectangle(d, d, d / 2),
    holes: bore > 0 ? [roundedRectangle(bore, bore, bore / 2)] : [],
  };
};

const ring = (d: number, t: number) => {
  const bore = Math.max(0, d - 2 * t);
  return {
    area: (Math.PI / 4) * (d ** 2 - bore ** 2),
    moment: (Math.PI / 64) * (d ** 4 - bore ** 4),
    plastic: (d ** 3 - bore ** 3) / 6,
  };
};

function solve(x: PlainInputs): Solved {
  const { d, t, density } = scalarsOf(x, 'd', 't', 'density');
  // A solid bar has a wall of half its diameter, give or take how well both are known.
  if (2 * t > 1.01 * d)
    return refused(
      'no-such-section',
      't',
      'the walls are thicker than the radius of the tube',
      'Measure again; a solid bar has a wall of half its diameter.',
    );
  const { area, moment, plastic } = ring(d, t);
  const n = exponents((factor) => ring(d, factor * t));
  return {
    outputs: {
      area,
      I: moment,
      Wel: (2 * moment) / d,
      Wpl: plastic,
      It: 2 * moment,
      lineMass: density * area,
    },
    detail: formsTable([
      ['area', 'circular ring, exact', n.area],
      ['second moment', 'circular ring, exact', n.moment],
      ['torsion', FORM, n.moment],
    ]),
  };
}
