import type { OutputSpec, Solved } from '../method.ts';
import { output, refused } from './outputs.ts';
import { type HollowSizes, hollowShape } from './profiles.ts';
import { PROFILE_OUTPUTS, profileNumbers, shapeForms } from './section-outputs.ts';
import { hollowTorsion } from './torsion-forms.ts';

const FORM = 'closed wall with rounded corners, annex of EN 10219-2: t³ h′/3 + 2 K Ah';

/** What both questions about rectangular hollow sections give. */
export const HOLLOW_OUTPUTS: readonly OutputSpec[] = [
  ...PROFILE_OUTPUTS,
  output(
    'It',
    'It',
    'secondMoment',
    'cm4',
    'torsion constant, closed wall with rounded corners',
    'It = t³ h′/3 + 2 K Ah, K = 2 Ah t / h′, h′ = 2((b − t) + (h − t)) − 2 Rc (4 − π), Ah = (b − t)(h − t) − Rc² (4 − π)',
  ),
  output('Ct', 'Ct', 'sectionModulus', 'cm3', 'torsion modulus', 'Ct = It / (t + K/t)'),
  {
    ...output(
      'ItBredt',
      'It,B',
      'secondMoment',
      'cm4',
      'torsion constant by Bredt’s formula alone, for comparison',
      'It,B = 4 Ah² t / h′',
    ),
    step: true,
  },
];

/** Properties of a rectangular hollow section; `sizesAt` takes the factor on the wall thickness. */
export function solveHollow(sizesAt: (factor: number) => HollowSizes, density: number): Solved {
  const sizes = sizesAt(1);
  const fault = faultOf(sizes);
  if (fault) return refused('no-such-section', fault[0], fault[1], 'Measure again.');
  const { constant, modulus, bredt } = hollowTorsion(sizes);
  return {
    outputs: {
      ...profileNumbers(hollowShape(sizes), density),
      It: constant,
      Ct: modulus,
      ItBredt: bredt,
    },
    detail: shapeForms(FORM, (factor) => {
      const walls = sizesAt(factor);
      return { shape: hollowShape(walls), torsion: hollowTorsion(walls).constant };
    }),
  };
}

/** Excess of the outer over the inner radius, in walls, at which a corner has no wall left. */
const CORNER = Math.SQRT2 / (Math.SQRT2 - 1);

function faultOf({ h, b, t, outer, inner }: HollowSizes): readonly [string, string] | undefined {
  const small = Math.min(h, b);
  if (2 * t >= small) return ['t', 'the walls are thicker than half the section'];
  if (2 * outer > small) return ['outer', 'the outer radius is more than half the section'];
  if (2 * inner > small - 2 * t) return ['inner', 'the inner radius is more than half the bore'];
  if (outer - inner >= CORNER * t) return ['outer', 'no wall would be left at the corners'];
  return undefined;
}
