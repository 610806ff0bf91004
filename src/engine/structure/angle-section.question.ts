import { type PlainInputs, question, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { areaMoments, principal } from './area-moments.ts';
import { radius, scalarsOf, size } from './inputs.ts';
import { DENSITY_OR_STEEL } from './material-inputs.ts';
import { output, refused } from './outputs.ts';
import { type AngleSizes, angleShape } from './profiles.ts';
import { sectionFigures, YZ } from './section-figure.ts';
import {
  PRINCIPAL_OUTPUTS,
  PROFILE_OUTPUTS,
  profileNumbers,
  shapeForms,
} from './section-outputs.ts';
import { stripTorsion } from './torsion-forms.ts';

const FORM = 'thin strips along the middle of the legs; root fillet left out, so on the low side';

export default question({
  id: 'angle-section',
  version: 1,
  title: 'Angle with root and toe radii',
  wording: 'How stiff is an angle, and how are its principal axes turned?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    size('a', 'a', 'length of the upright leg', [5, 300], 'envelope.height'),
    size('b', 'b', 'length of the flat leg', [5, 300], 'envelope.width'),
    size('t', 't', 'thickness of the legs', [0.5, 40], 'thickness'),
    radius('root', 'r₁', 'radius of the root fillet'),
    radius('toe', 'r₂', 'radius of the toes'),
    DENSITY_OR_STEEL,
  ],
  body: {
    body: 'solve',
    outputs: [
      ...PROFILE_OUTPUTS,
      ...PRINCIPAL_OUTPUTS,
      output('tangent', 'tan α', 'ratio', '1', 'tangent of that angle, as tables give it', 'tan α'),
      output(
        'cy',
        'cy',
        'length',
        'mm',
        'centroid from the back of the upright leg',
        'cy = Sz / A',
      ),
      output('cz', 'cz', 'length', 'mm', 'centroid from the back of the flat leg', 'cz = Sy / A'),
      output('Iyz', 'Iyz', 'secondMoment', 'cm4', 'product moment of area', 'Iyz = ∫ y z dA'),
      output(
        'It',
        'It',
        'secondMoment',
        'cm4',
        'torsion constant, thin strips',
        'It = ⅓ t³ ((a − t/2) + (b − t/2))',
      ),
    ],
    solve,
  },
  figures: (x, outs) =>
    outs.area ? sectionFigures(angleShape(scalarsOf(x, 'a', 'b', 't', 'root', 'toe')), YZ) : [],
  modelError: { It: { relative: 0.05, sharedFraction: 0.5 } },
  sources: [
    {
      title: 'EN 10056-1:2017, Structural steel equal and unequal leg angles, part 1',
      at: 'sizes, radii and section properties',
      status: 'from memory',
    },
  ],
  assumptions: [
    'The heel is square; the upright leg points along z, the flat leg along y.',
    'Plastic moduli hold for bending held to the plane of y or z.',
    'Torsion is that of thin strips: the root fillet would add some per cent.',
  ],
  cautions: [],
  checks: [
    {
      what: '60×40×5, 50×30×5 and 65×50×5: area, centroid, moments, principal axes',
      source: 'section tables to EN 10056-1',
      status: 'seen',
      test: 'test/published/en-10056-angles.test.ts',
    },
  ],
  example: {
    a: '60 ± 0.5 mm',
    b: '40 ± 0.5 mm',
    t: '5 ± 0.1 mm',
    root: '6 ± 0.5 mm',
    toe: '3 ± 0.5 mm',
    density: '7850 ± 40 kg/m3',
  },
});

const torsionOf = ({ a, b, t }: AngleSizes): number =>
  stripTorsion([
    { length: a - t / 2, thickness: t },
    { length: b - t / 2, thickness: t },
  ]);

function solve(x: PlainInputs): Solved {
  const { density, ...sizes } = scalarsOf(x, 'a', 'b', 't', 'root', 'toe', 'density');
  const fault = faultOf(sizes);
  if (fault) return refused('no-such-section', fault[0], fault[1], 'Measure again.');
  const shape = angleShape(sizes);
  const m = areaMoments(shape);
  const axes = principal(m);
  return {
    outputs: {
      ...profileNumbers(shape, density),
      I1: axes.major,
      I2: axes.minor,
      angle: axes.angle,
      tangent: Math.tan(axes.angle),
      cy: m.centroid.x,
      cz: m.centroid.y,
      Iyz: m.ixy,
      It: torsionOf(sizes),
    },
    detail: shapeForms(FORM, (factor) => {
      const walls = { ...sizes, t: factor * sizes.t };
      return { shape: angleShape(walls), torsion: torsionOf(walls) };
    }),
  };
}

function faultOf({ a, b, t, root, toe }: AngleSizes): readonly [string, string] | undefined {
  if (toe > t) return ['toe', 'the toe radius is more than the thickness'];
  if (Math.min(a, b) < t + root + toe) return ['root', 'the radii are longer than the shorter leg'];
  return undefined;
}
