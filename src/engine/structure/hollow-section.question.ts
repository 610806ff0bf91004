import { question } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { HOLLOW_OUTPUTS, solveHollow } from './hollow-section.ts';
import { radius, scalarsOf, size } from './inputs.ts';
import { DENSITY_OR_STEEL } from './material-inputs.ts';
import { hollowShape } from './profiles.ts';
import { sectionFigures, YZ } from './section-figure.ts';

export default question({
  id: 'hollow-section',
  version: 1,
  title: 'Rectangular hollow section with measured corners',
  wording: 'How stiff is a rectangular hollow profile in bending and in torsion?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    size('h', 'h', 'depth of the section', [5, 800], 'envelope.height'),
    size('b', 'b', 'width of the section', [5, 800], 'envelope.width'),
    size('t', 't', 'wall thickness', [0.3, 40], 'thickness'),
    radius('outer', 'ro', 'outer radius of the corners'),
    radius('inner', 'ri', 'inner radius of the corners'),
    DENSITY_OR_STEEL,
  ],
  body: {
    body: 'solve',
    outputs: HOLLOW_OUTPUTS,
    solve: (x) => {
      const { density, t, ...rest } = scalarsOf(x, 'h', 'b', 't', 'outer', 'inner', 'density');
      return solveHollow((factor) => ({ ...rest, t: factor * t }), density);
    },
  },
  figures: (x, outs) =>
    outs.area ? sectionFigures(hollowShape(scalarsOf(x, 'h', 'b', 't', 'outer', 'inner')), YZ) : [],
  modelError: {},
  sources: [
    {
      title: 'EN 10219-2:2006, Cold formed welded structural hollow sections, part 2',
      at: 'annex of formulas for the torsion constant and modulus',
      status: 'from memory',
    },
  ],
  assumptions: [
    'One wall thickness all round, all four corners alike; y is the horizontal axis, z the upright one.',
    'The exponents of the thickness hold outer sizes and radii fixed.',
    'The torsion constant is the closed form with corners; Bredt’s formula alone stands beside it.',
  ],
  cautions: [],
  checks: [
    {
      what: '40×20×2 and 60×40×3 with radii of 2 t and t: all properties',
      source: 'section tables after EN 10219-2:2006',
      status: 'seen',
      test: 'test/published/en-10219-hollow-sections.test.ts',
    },
  ],
  example: {
    h: '60 ± 0.2 mm',
    b: '40 ± 0.2 mm',
    t: '3 ± 0.05 mm',
    outer: '6 ± 0.5 mm',
    inner: '3 ± 0.5 mm',
    density: '7850 ± 40 kg/m3',
  },
});
