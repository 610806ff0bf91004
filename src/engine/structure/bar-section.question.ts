import { question } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { scalarsOf, size } from './inputs.ts';
import { DENSITY_OR_STEEL } from './material-inputs.ts';
import { output } from './outputs.ts';
import { roundedRectangle } from './profiles.ts';
import { sectionFigures, YZ } from './section-figure.ts';
import { AREA, MASS } from './section-outputs.ts';
import { rectangleTorsion } from './torsion-forms.ts';

export default question({
  id: 'bar-section',
  version: 1,
  title: 'Solid rectangle',
  wording: 'How stiff is a solid rectangular bar or strip in bending and in torsion?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    size('h', 'h', 'depth of the bar', [0.3, 500], 'envelope.height'),
    size('b', 'b', 'width of the bar', [0.3, 500], 'envelope.width'),
    DENSITY_OR_STEEL,
  ],
  body: {
    body: 'row',
    outputs: [
      { ...AREA, shown: 'A = b h', of: (h, b) => h * b },
      {
        ...output(
          'Iy',
          'Iy',
          'secondMoment',
          'cm4',
          'second moment of area about the axis y',
          'Iy = b h³ / 12',
        ),
        of: (h, b) => (b * h ** 3) / 12,
      },
      {
        ...output(
          'Wely',
          'Wel,y',
          'sectionModulus',
          'cm3',
          'elastic section modulus about the axis y',
          'Wel,y = b h² / 6',
        ),
        of: (h, b) => (b * h ** 2) / 6,
      },
      {
        ...output(
          'Wply',
          'Wpl,y',
          'sectionModulus',
          'cm3',
          'plastic section modulus about the axis y',
          'Wpl,y = b h² / 4',
        ),
        of: (h, b) => (b * h ** 2) / 4,
      },
      {
        ...output(
          'Iz',
          'Iz',
          'secondMoment',
          'cm4',
          'second moment of area about the axis z',
          'Iz = h b³ / 12',
        ),
        of: (h, b) => (h * b ** 3) / 12,
      },
      {
        ...output(
          'It',
          'It',
          'secondMoment',
          'cm4',
          'torsion constant, solid rectangle',
          'It = l s³ (⅓ − (64/π⁵)(s/l) Σ tanh(n π l / 2 s)/n⁵, n odd), l and s the longer and shorter side',
        ),
        of: (h, b) => rectangleTorsion(b, h),
      },
      { ...MASS, of: (h, b, density) => h * b * density },
    ],
  },
  figures: (x) => {
    const { h, b } = scalarsOf(x, 'h', 'b');
    return sectionFigures({ outline: roundedRectangle(b, h, 0), holes: [] }, YZ);
  },
  modelError: {},
  sources: [
    {
      title: 'Timoshenko and Goodier, Theory of Elasticity, 3rd edition 1970',
      at: 'torsion of rectangular bars (series)',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Sharp corners; the depth h is upright, y is the horizontal axis.',
    'The torsion constant is the exact series of the solid rectangle, not that of a thin strip.',
  ],
  cautions: [],
  checks: [
    {
      what: 'torsion of rectangles of ratios 1, 2, 10 by the factors 0.1406, 0.229, 0.312',
      source: 'Timoshenko and Goodier, Theory of Elasticity, table of rectangular bars',
      status: 'from memory, recomputed',
      test: 'test/published/saint-venant-torsion.test.ts',
    },
  ],
  example: { h: '40 ± 0.1 mm', b: '10 ± 0.05 mm', density: '7850 ± 40 kg/m3' },
});
