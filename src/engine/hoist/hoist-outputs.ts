import type { Kind } from '../../quantity/index.ts';
import type { Formula, OutputSpec } from '../method.ts';
import {
  armLoad,
  armMost,
  centreX,
  centreY,
  centreZ,
  limitX,
  limitY,
  loadOn,
  marginX,
  marginY,
  type OnPads,
  pulledMarginX,
  pulledMarginY,
  spareArm,
  spareLift,
  spareX,
  spareY,
} from './on-pads.ts';

/** Sums of the tally, then the scalars of the hoist, in this order. */
const ARGUMENTS = [
  'mass',
  'placed',
  'momentX',
  'momentY',
  'momentZ',
  'takenMass',
  'takenX',
  'takenY',
  'front',
  'rear',
  'left',
  'right',
  'shareX',
  'leastX',
  'shareY',
  'pull',
  'pullX',
  'pullY',
  'rating',
  'armRating',
] as const;
type Arguments = OnPads & Record<'takenMass' | 'takenX' | 'takenY', number>;

/** The arguments of a formula by their names. */
const named = (x: readonly number[]): Arguments =>
  Object.fromEntries(
    ARGUMENTS.map((name, i) => [name, x[i] ?? Number.NaN]),
  ) as unknown as Arguments;

type Output = OutputSpec & { readonly of: Formula };
const out = (
  name: string,
  symbol: string,
  kind: Kind,
  unit: string,
  meaning: string,
  shown: string,
  of: (s: Arguments) => number,
  more: Partial<OutputSpec> = {},
): Output => ({
  ...{ name, symbol, kind, unit, meaning, shown },
  of: (...x) => of(named(x)),
  ...more,
});

const mm = (
  name: string,
  symbol: string,
  meaning: string,
  shown: string,
  of: (s: OnPads) => number,
  more: Partial<OutputSpec> = {},
) => out(name, symbol, 'length', 'mm', meaning, shown, of, more);
const kg = (
  name: string,
  symbol: string,
  meaning: string,
  shown: string,
  of: (s: Arguments) => number,
  more: Partial<OutputSpec> = {},
) => out(name, symbol, 'mass', 'kg', meaning, shown, of, more);

const decides = { decides: 'margin' } as const;
const step = { step: true } as const;

/** What is left on the hoist, where its centre is, what the pads carry, and how far that is from the limits. */
export const HOIST_OUTPUTS: readonly Output[] = [
  mm(
    'spareX',
    'Δₓ',
    'margin in X beyond what is asked for, the worse of with and without the pull',
    'Δₓ = min(a, a_F) − max(pₓ (X₂ − X₁), aₓ)',
    spareX,
    decides,
  ),
  mm(
    'spareY',
    'Δ_y',
    'margin in Y beyond what is asked for, the worse of with and without the pull',
    'Δ_y = min(b, b_F) − p_y (Y₂ − Y₁)',
    spareY,
    decides,
  ),
  kg(
    'spareArm',
    'Δₐ',
    'rating of one arm less the largest load on one, pull included',
    'Δₐ = Rₐ − N',
    spareArm,
    decides,
  ),
  kg(
    'spareLift',
    'Δ_R',
    'rating of the lift less what it carries, pull included',
    'Δ_R = R − m − max(0, m_F)',
    spareLift,
    decides,
  ),
  kg('mass', 'm', 'mass left on the hoist', 'm = Σ m s', (s) => s.mass),
  mm('x', 'X', 'centre of gravity of what is left, X', 'X = Σ m s x / m′', centreX),
  mm('y', 'Y', 'centre of gravity of what is left, Y', 'Y = Σ m s y / m′', centreY),
  mm('z', 'Z', 'centre of gravity of what is left, Z, by the vehicle', 'Z = Σ m s z / m′', centreZ),
  mm('marginX', 'a', 'margin to the nearer pad line in X', 'a = min(X − X₁, X₂ − X)', marginX),
  mm(
    'pulledX',
    'a_F',
    'margin in X with the extra pull',
    'a_F = min(X_F − X₁, X₂ − X_F); X_F = (m X + m_F x_F) / (m + m_F)',
    pulledMarginX,
  ),
  mm(
    'limitShareX',
    'pₓ (X₂ − X₁)',
    'share of the pad span in X',
    'pₓ (X₂ − X₁)',
    (s) => s.shareX * (s.rear - s.front),
    step,
  ),
  mm('limitX', 'aₗ', 'margin in X asked for', 'aₗ = max(pₓ (X₂ − X₁), aₓ)', limitX),
  mm('marginY', 'b', 'margin to the nearer pad line in Y', 'b = min(Y − Y₁, Y₂ − Y)', marginY),
  mm('pulledY', 'b_F', 'margin in Y with the extra pull', 'b_F as a_F, in Y', pulledMarginY),
  mm('limitY', 'bₗ', 'margin in Y asked for', 'bₗ = p_y (Y₂ − Y₁)', limitY),
  ...(['FL', 'FR', 'RL', 'RR'] as const).map((pad) =>
    kg(
      `pad${pad}`,
      `N${pad}`,
      `load on the pad ${pad}, by the split assumed`,
      'share of its line in X times share of its side in Y, of m',
      (s) => loadOn(pad, s),
    ),
  ),
  kg(
    'armLoad',
    'N',
    'largest load on one arm by the split assumed, pull included',
    'N = max Nᵢ',
    armLoad,
  ),
  kg(
    'armMost',
    'N⁺',
    'largest load that one arm could carry in equilibrium, pull included',
    'N⁺ = max min(load of its line, load of its side)',
    armMost,
  ),
  kg(
    'takenMass',
    'mₜ',
    'mass that comes off with this step',
    'mₜ = Σ m (1 − s)',
    (s) => s.takenMass,
    step,
  ),
  out(
    'takenX',
    'Sₜₓ',
    'massMoment',
    'kg.m',
    'moment of what comes off, X',
    'Σ m (1 − s) x',
    (s) => s.takenX,
    step,
  ),
  out(
    'takenY',
    'Sₜ_y',
    'massMoment',
    'kg.m',
    'moment of what comes off, Y',
    'Σ m (1 − s) y',
    (s) => s.takenY,
    step,
  ),
  out(
    'leftX',
    'Sₓ',
    'massMoment',
    'kg.m',
    'moment of what is left, X',
    'Σ m s x',
    (s) => s.momentX,
    step,
  ),
  out(
    'leftY',
    'S_y',
    'massMoment',
    'kg.m',
    'moment of what is left, Y',
    'Σ m s y',
    (s) => s.momentY,
    step,
  ),
];
