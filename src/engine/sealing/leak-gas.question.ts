import { GASES, gasOf } from '../../data/index.ts';
import { type PlainInputs, question, type Solved, type TermInput } from '../method.ts';
import { SEALING } from '../sections.ts';
import { output, refused } from '../structure/outputs.ts';
import { GAS_FLOW } from './leak-inputs.ts';

const gasTerm = (name: string, meaning: string): TermInput => ({
  in: 'term',
  name,
  meaning,
  options: GASES.map((g) => g.id),
  where: 'state it',
  find: (at) => at.word(at.given(name)),
});

export default question({
  id: 'leak-gas',
  version: 1,
  title: 'The same leak in another gas',
  wording: 'How much of another gas would leak at the same pressures and temperature?',
  subject: 'zone',
  onRequest: true,
  section: SEALING,
  inputs: [
    GAS_FLOW,
    gasTerm('measuredWith', 'gas of the stated leak'),
    gasTerm('wanted', 'gas that is asked about'),
  ],
  body: {
    body: 'solve',
    outputs: [
      output('laminar', 'Q₁', 'gasFlow', 'Pa.m3/s', 'leak if it flows laminar', 'Q₁ = Q η / η₁'),
      output(
        ...(['molecular', 'Q₂', 'gasFlow', 'Pa.m3/s'] as const),
        'leak if it flows molecule by molecule',
        'Q₂ = Q √(M / M₁)',
      ),
      output('laminarRatio', 'r₁', 'ratio', '1', 'factor, laminar', 'r₁ = η / η₁'),
      output('molecularRatio', 'r₂', 'ratio', '1', 'factor, molecular', 'r₂ = √(M / M₁)'),
    ],
    solve,
  },
  modelError: {
    laminar: { relative: 0.01, sharedFraction: 1 },
    laminarRatio: { relative: 0.01, sharedFraction: 1 },
  },
  sources: [
    {
      title: 'Laminar flow goes inversely with viscosity, molecular with the root of molar mass',
      status: 'published',
    },
    { title: 'Viscosities at 20 °C, handbook values', status: 'from memory' },
  ],
  assumptions: [
    'Same pressures and same temperature on both sides for both gases, and pure gas: a mixture with 10 % helium leaks about a tenth of the helium.',
    'Which of the two it is hangs on the size of the leak: ask leak-through-hole for the free path. In between the truth lies between the two.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'factors from helium to air, nitrogen, argon, hydrogen, neon and water vapour, laminar and molecular',
      source: 'conversion tables of leak-test practice',
      status: 'seen',
      test: 'test/published/leak-arithmetic.test.ts',
    },
  ],
  example: { Q: '1e-6 ± 5e-8 Pa.m3/s', measuredWith: 'helium', wanted: 'air' },
});

function solve({ scalars, terms }: PlainInputs): Solved {
  const [from, to] = [gasOf(terms.measuredWith ?? ''), gasOf(terms.wanted ?? '')];
  if (!from) return unknownGas('measuredWith', terms.measuredWith);
  if (!to) return unknownGas('wanted', terms.wanted);
  const q = scalars.Q ?? Number.NaN;
  const laminarRatio = from.viscosity / to.viscosity;
  const molecularRatio = Math.sqrt(from.molarMass / to.molarMass);
  return {
    outputs: {
      laminar: q * laminarRatio,
      molecular: q * molecularRatio,
      laminarRatio,
      molecularRatio,
    },
  };
}

const unknownGas = (column: string, value = ''): Solved =>
  refused(
    'unknown-gas',
    column,
    'no gas of the table',
    `Take one of: ${GASES.map((g) => g.id).join(', ')}.`,
    value,
  );
