import { type PlainInputs, question, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { areaMoments, principal } from './area-moments.ts';
import { radius, scalarsOf, size } from './inputs.ts';
import { DENSITY_OR_STEEL } from './material-inputs.ts';
import { output, refused } from './outputs.ts';
import { channelShape, type FlangeSides, type ISizes } from './profiles.ts';
import { sectionFigures, YZ } from './section-figure.ts';
import {
  PRINCIPAL_OUTPUTS,
  PROFILE_OUTPUTS,
  profileNumbers,
  shapeForms,
} from './section-outputs.ts';
import { openWarping } from './shear-centre.ts';
import { placedWalls, type ThinWalls } from './thin-walls.ts';
import { stripTorsion } from './torsion-forms.ts';

const FORM =
  'thin strips along the middle of web and flanges; fillets left out, so on the low side';
const SIDES: Readonly<Record<string, FlangeSides>> = {
  'same side (channel)': 'same',
  'opposite sides (Z)': 'opposite',
};

export default question({
  id: 'channel-section',
  version: 1,
  title: 'Channel or Z-section',
  wording: 'How stiff is a channel or Z-section, and where is its shear centre?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    size('h', 'h', 'depth of the section', [5, 600], 'envelope.height'),
    size('b', 'b', 'width of a flange from the back of the web', [5, 300]),
    size('tw', 'tw', 'thickness of the web', [0.3, 40], 'thickness'),
    size('tf', 'tf', 'thickness of the flanges', [0.3, 40], 'thickness'),
    radius('r', 'r', 'radius of the root fillets'),
    {
      in: 'term',
      name: 'flanges',
      meaning: 'sides to which the flanges point',
      options: Object.keys(SIDES),
      where: 'not in the record: look at the part',
      find: (at) => at.word(''),
    },
    DENSITY_OR_STEEL,
  ],
  body: {
    body: 'solve',
    outputs: [
      ...PROFILE_OUTPUTS,
      ...PRINCIPAL_OUTPUTS,
      output('Iyz', 'Iyz', 'secondMoment', 'cm4', 'product moment of area', 'Iyz = ∫ y z dA'),
      output(
        'It',
        'It',
        'secondMoment',
        'cm4',
        'torsion constant, thin strips',
        'It = Σ b t³ / 3 along the middle lines',
      ),
      output(
        'Iw',
        'Iw',
        'warpingConstant',
        'cm6',
        'warping constant about the shear centre',
        'Iw = ∫ ω² dA along the middle lines',
      ),
      output(
        'shearCentre',
        'e',
        'length',
        'mm',
        'shear centre from the middle of the web, below zero away from the upper flange',
        'e = −∫ ω z dA / Iy along the middle lines, axes as drawn',
      ),
    ],
    solve,
  },
  figures: (x, outs) => {
    const sizes = scalarsOf(x, 'h', 'b', 'tw', 'tf', 'r');
    const sides = SIDES[x.terms.flanges ?? ''];
    if (!outs.area || !sides) return [];
    const { shearCentre } = openWarping(middleLines(sizes, sides));
    return sectionFigures(channelShape(sizes, sides), { ...YZ, shearCentre });
  },
  modelError: { It: { relative: 0.05, sharedFraction: 0.5 } },
  sources: [
    { title: 'Shoelace formulas for polygons', status: 'common practice, no source' },
    {
      title: 'Vlasov, Thin-walled Elastic Beams, 2nd edition 1961',
      at: 'sectorial coordinates: shear centre and warping',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Flanges of even thickness and alike; y is the horizontal axis, z the upright one; the upper flange points along y.',
    'Root fillets count in area and moments; outer corners are square.',
    'Shear centre and warping go by thin walls along the middle lines.',
  ],
  cautions: [],
  checks: [
    {
      what: 'Z-section 100 deep, flanges 50×5: area, moments, product moment, principal axes',
      source: 'sums of rectangles, closed form',
      status: 'own inputs, published formula',
      test: 'test/published/polygon-formulas.test.ts',
    },
    {
      what: 'shear centre of a channel: e = 3 b² tf / (h tw + 6 b tf)',
      source: 'closed form for thin walls, textbooks of strength of materials',
      status: 'from memory, recomputed',
      test: 'test/published/thin-walls.test.ts',
    },
  ],
  example: {
    h: '100 ± 0.5 mm',
    b: '50 ± 0.5 mm',
    tw: '5 ± 0.1 mm',
    tf: '5 ± 0.1 mm',
    r: '5 ± 0.5 mm',
    flanges: 'same side (channel)',
    density: '7850 ± 40 kg/m3',
  },
});

/** Middle lines of web and flanges. */
function middleLines({ h, b, tw, tf }: ISizes, sides: FlangeSides): ThinWalls {
  const [z, y] = [(h - tf) / 2, b - tw / 2];
  return {
    nodes: [
      { x: y, y: z },
      { x: 0, y: z },
      { x: 0, y: -z },
      { x: sides === 'same' ? y : -y, y: -z },
    ],
    walls: [
      { from: 0, to: 1, thickness: tf },
      { from: 1, to: 2, thickness: tw },
      { from: 2, to: 3, thickness: tf },
    ],
  };
}

function solve(x: PlainInputs): Solved {
  const { density, ...sizes } = scalarsOf(x, 'h', 'b', 'tw', 'tf', 'r', 'density');
  const sides = SIDES[x.terms.flanges ?? ''];
  if (!sides)
    return refused(
      'sides-not-named',
      'flanges',
      'it is not said to which sides the flanges point',
      `Give ${Object.keys(SIDES).join(' or ')}.`,
      x.terms.flanges,
    );
  const fault = faultOf(sizes);
  if (fault) return refused('no-such-section', fault[0], fault[1], 'Measure again.');
  const shape = channelShape(sizes, sides);
  const m = areaMoments(shape);
  const axes = principal(m);
  const lines = middleLines(sizes, sides);
  const warping = openWarping(lines);
  return {
    outputs: {
      ...profileNumbers(shape, density),
      I1: axes.major,
      I2: axes.minor,
      angle: axes.angle,
      Iyz: m.ixy,
      It: stripTorsion(placedWalls(lines)),
      Iw: warping.warping,
      shearCentre: warping.shearCentre.x,
    },
    detail: shapeForms(FORM, (factor) => {
      const walls = { ...sizes, tw: factor * sizes.tw, tf: factor * sizes.tf };
      const torsion = stripTorsion(placedWalls(middleLines(walls, sides)));
      return { shape: channelShape(walls, sides), torsion };
    }),
  };
}

function faultOf({ h, b, tw, tf, r }: ISizes): readonly [string, string] | undefined {
  if (h - 2 * tf - 2 * r < 0) return ['h', 'the flanges and fillets are deeper than the section'];
  if (b - tw - r < 0) return ['b', 'the web and fillet are wider than the flange'];
  return undefined;
}
