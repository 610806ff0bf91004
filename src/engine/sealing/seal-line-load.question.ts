import { type Formula, question } from '../method.ts';
import { SEALING } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { lidInputs } from './lid-inputs.ts';
import {
  held,
  heldPitch,
  type Lid,
  lift,
  pressed,
  pressedCorner,
  pressedMean,
  pressedPitch,
  spread,
} from './line-load.ts';
import { lidOf, lineLoadPlots } from './line-load-figure.ts';

const INPUTS = lidInputs((at) => at.subject);

/** A formula of the lid as a whole, of the inputs in their order. */
const ofLid =
  (of: (l: Lid) => number): Formula =>
  (...x) =>
    of(lidOf(x));
const load = (
  name: string,
  symbol: string,
  meaning: string,
  shown: string,
  of: (l: Lid) => number,
) => worked(name, symbol, 'lineLoad', 'N/mm', meaning, shown, ofLid(of));

export const LID_NAMES = INPUTS.map((i) => i.name);

export default question({
  id: 'seal-line-load',
  version: 1,
  title: 'Line load of a lid’s seal',
  wording: 'How hard is the gasket pressed between its fasteners and at the corners?',
  subject: 'joint',
  section: SEALING,
  inputs: INPUTS,
  uses: ['bolt-preload'],
  body: {
    body: 'row',
    outputs: [
      load(
        'held',
        'q₁',
        'with compression limiters: least line load, half-way between fasteners',
        'q₁ = 2 q₀ (sinh(u/2) cos(u/2) + cosh(u/2) sin(u/2)) / (sinh(u) + sin(u))',
        (l) => held(l, l.pitch, 0),
      ),
      {
        ...load(
          'heldMargin',
          'm₁',
          'with compression limiters: least line load less demand',
          'm₁ = q₁ − q_d',
          (l) => held(l, l.pitch, 0) - l.demand,
        ),
        decides: 'margin',
      },
      worked(
        ...(['heldPitch', 's₁', 'length', 'mm'] as const),
        'with compression limiters: pitch at which it falls to the demand',
        's₁ = u₁ / β where q₁ = q_d',
        ofLid(heldPitch),
      ),
      load(
        'heldCorner',
        'q₃',
        'with compression limiters: least line load at a corner',
        'q₁ with the pitch s_c',
        (l) => held(l, l.cornerPitch, 0),
      ),
      load(
        'heldPressure',
        'q₄',
        'with compression limiters and pressure inside: least line load',
        'q₄ = q₀ − (q₀ + q_p) (1 − q₁ / q₀)',
        (l) => held(l, l.pitch, lift(l)),
      ),
      load(
        'mean',
        'q̄',
        'without limiters: force of the fasteners over the length',
        'q̄ = F / s',
        pressedMean,
      ),
      load(
        'pressed',
        'q₂',
        'without limiters: least line load, half-way between fasteners',
        'q₂ = F β (sinh(u/2) cos(u/2) + cosh(u/2) sin(u/2)) / (cosh(u) − cos(u))',
        pressed,
      ),
      {
        ...load(
          'pressedMargin',
          'm₂',
          'without limiters: least line load less demand',
          'm₂ = q₂ − q_d',
          (l) => pressed(l) - l.demand,
        ),
        decides: 'margin',
      },
      worked(
        ...(['pressedPitch', 's₂', 'length', 'mm'] as const),
        'without limiters: pitch at which it falls to the demand',
        's₂ = u₂ / β where q₂ = q_d',
        ofLid(pressedPitch),
      ),
      load(
        'pressedCorner',
        'q₅',
        'without limiters: least line load at a corner',
        'q₅ = Σ F β exp(−β x) (cos(β x) + sin(β x)) / 2',
        pressedCorner,
      ),
      load(
        'lift',
        'q_p',
        'line load with which the pressure inside lifts the lid',
        'q_p = p A / U',
        lift,
      ),
      worked(
        ...(['each', 'F₁', 'force', 'N'] as const),
        'load on each fastener from gasket and pressure',
        'F₁ = (q₀ + q_p) s',
        ofLid((l) => (l.rest + lift(l)) * l.pitch),
      ),
      {
        ...worked(
          ...(['u', 'u', 'ratio', '1'] as const),
          'pitch over the length in which a load spreads, below 1.5 almost even',
          'u = β s',
          ofLid((l) => spread(l) * l.pitch),
        ),
        step: true,
      },
      {
        ...worked(
          ...(['beta', 'β', 'curvature', '/m'] as const),
          'inverse length over which a load spreads',
          'β⁴ = 3 q₀ / ((h₀ − h₁) E b t³)',
          ofLid(spread),
        ),
        step: true,
      },
    ],
  },
  figures: ({ scalars }) => lineLoadPlots(lidOf(LID_NAMES.map((n) => scalars[n] ?? Number.NaN))),
  modelError: {
    held: { relative: 0.1, sharedFraction: 0.7 },
    pressed: { relative: 0.1, sharedFraction: 0.7 },
  },
  sources: [
    { title: 'Hetényi, Beams on Elastic Foundation, 1946', status: 'from memory' },
    { title: 'Demand of gaskets by kind', status: 'common practice, no source' },
  ],
  assumptions: [
    'With limiters the flange is held at their height and clamped flat at each fastener: the gasket’s own squeeze makes the load and the bow of the flange takes from it. Without them the fasteners’ force is all on the gasket.',
    'The gasket is a straight spring between its free and its squeezed height; foam creeps and takes a set, so that the load falls in service.',
    'A corner is a straight row with a wider gap; the body under the lid is stiff.',
  ],
  cautions: ['sealed-by-judgement', 'pressure-test'],
  checks: [
    {
      what: 'rows of fasteners at βs 0.5 to 4: load half-way over load under them; aluminium flange 20 × 6 mm at 80 mm',
      source: 'Hetényi, closed form, against a sum of 801 loads',
      status: 'own inputs, published formula',
      test: 'test/published/hetenyi-beams.test.ts',
    },
  ],
  example: {
    pitch: '89 ± 0.5 mm',
    cornerPitch: '110 ± 1 mm',
    perimeter: '5.54 ± 0.01 m',
    area: '1.7 ± 0.02 m2',
    width: '28 ± 0.2 mm',
    thickness: '2.6 ± 0.05 mm',
    modulus: '10 ± 0.5 GPa',
    free: '8 ± 0.1 mm',
    squeezed: '5.6 ± 0.1 mm',
    rest: '1.8 ± 0.4 N/mm',
    demand: '1 ± 0.2 N/mm',
    pressure: '8 ± 2 kPa',
    force: '8000 ± 1600 N',
  },
});
