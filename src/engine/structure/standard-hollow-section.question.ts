import { type PlainInputs, question, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { HOLLOW_OUTPUTS, solveHollow } from './hollow-section.ts';
import { scalarsOf, size } from './inputs.ts';
import { DENSITY_OR_STEEL } from './material-inputs.ts';
import { refused } from './outputs.ts';
import { hollowShape } from './profiles.ts';
import { sectionFigures, YZ } from './section-figure.ts';

const COLD = 'EN 10219-2, cold formed';
const HOT = 'EN 10210-2, hot finished';

/** Corner radii in wall thicknesses; the steps of EN 10219-2 go by the nominal wall. */
function radiiOf(rule: string, t: number): { outer: number; inner: number } | undefined {
  if (rule === HOT) return { outer: 1.5, inner: 1 };
  if (rule !== COLD) return undefined;
  // Half a per cent of grace: a wall given as 6 mm may come as 6.0000001 from another unit.
  if (t <= 6.03e-3) return { outer: 2, inner: 1 };
  return t <= 10.05e-3 ? { outer: 2.5, inner: 1.5 } : { outer: 3, inner: 2 };
}

export default question({
  id: 'standard-hollow-section',
  version: 1,
  title: 'Rectangular hollow section with the corners of its standard',
  wording: 'How stiff is a rectangular hollow section of a standard in bending and in torsion?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    size('h', 'h', 'depth of the section', [20, 800], 'envelope.height'),
    size('b', 'b', 'width of the section', [20, 800], 'envelope.width'),
    size('t', 't', 'wall thickness', [1, 40], 'thickness'),
    {
      in: 'term',
      name: 'rule',
      meaning: 'standard that sets the corner radii',
      options: [COLD, HOT],
      where: 'not in the record: by the make of the profile',
      find: (at) => at.word(''),
    },
    DENSITY_OR_STEEL,
  ],
  body: { body: 'solve', outputs: HOLLOW_OUTPUTS, solve },
  figures: (x, outs) => {
    const { h, b, t } = scalarsOf(x, 'h', 'b', 't');
    const radii = radiiOf(x.terms.rule ?? '', t);
    if (!outs.area || !radii) return [];
    const [outer, inner] = [radii.outer * t, radii.inner * t];
    return sectionFigures(hollowShape({ h, b, t, outer, inner }), YZ);
  },
  modelError: {},
  sources: [
    {
      title: 'EN 10219-2:2006, Cold formed welded structural hollow sections, part 2',
      at: 'radii for calculation: 2 t / 1 t to 6 mm, 2.5 t / 1.5 t to 10 mm, 3 t / 2 t above; annex of formulas',
      status: 'from memory',
    },
    {
      title: 'EN 10210-2:2006, Hot finished structural hollow sections, part 2',
      at: 'radii for calculation: 1.5 t / 1 t',
      status: 'from memory',
    },
  ],
  assumptions: [
    'One wall thickness all round; y is the horizontal axis, z the upright one.',
    'Corner radii are those of the standard and grow with the wall, so the exponents of the thickness hold the outer sizes only.',
    'The torsion constant is the closed form with corners; Bredt’s formula alone stands beside it.',
  ],
  cautions: [],
  checks: [
    {
      what: '40×20×2, 50×30×3 and 60×40×3: all properties; 100×100×4 by both standards',
      source: 'section tables after EN 10219-2:2006 and EN 10210-2:2006',
      status: 'seen',
      test: 'test/published/en-10219-hollow-sections.test.ts',
    },
  ],
  example: {
    h: '100 ± 0.5 mm',
    b: '100 ± 0.5 mm',
    t: '4 ± 0.1 mm',
    rule: COLD,
    density: '7850 ± 40 kg/m3',
  },
});

function solve(x: PlainInputs): Solved {
  const { h, b, t, density } = scalarsOf(x, 'h', 'b', 't', 'density');
  const rule = x.terms.rule ?? '';
  const radii = radiiOf(rule, t);
  if (!radii)
    return refused(
      'no-rule',
      'rule',
      'the standard that sets the corners is not named',
      `Give ${COLD} or ${HOT}, or measure the radii and ask hollow-section.`,
      rule,
    );
  return solveHollow((factor) => {
    const wall = factor * t;
    return { h, b, t: wall, outer: radii.outer * wall, inner: radii.inner * wall };
  }, density);
}
