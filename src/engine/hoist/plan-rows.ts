import type { Kind } from '../../quantity/index.ts';
import type { Id } from '../../study/index.ts';
import type { Finder, Found, ScalarColumn, ScalarInput, TermColumn } from '../method.ts';
import { precedenceOf } from './removal-precedence.ts';

/** An output of the balance after a step, as a column; those that hang on a rating may be missing. */
const balance = (
  name: string,
  symbol: string,
  kind: Kind,
  unit: string,
  meaning: string,
  optional = false,
): ScalarColumn => ({
  in: 'scalar',
  ...{ name, symbol, kind, unit, meaning },
  range: [-20000, 20000],
  where: 'balance on the hoist after the step',
  ...(optional ? { optional: true } : {}),
  find: (at, row) => at.ask('hoist-balance', row, name),
});

const labelsOf = (at: Finder, ids: Iterable<Id>): string =>
  [...ids].map((id) => at.view.node(id)?.label ?? id).join('; ');

const term = (
  name: string,
  meaning: string,
  where: string,
  text: (at: Finder, row: Id) => string,
): TermColumn => ({ in: 'term', name, meaning, where, find: (at, row) => at.word(text(at, row)) });

export const PLAN_COLUMNS: readonly (ScalarColumn | TermColumn)[] = [
  term('step', 'number of the step', 'removal plan', (at, row) => at.view.node(row)?.label ?? row),
  term('doing', 'what is done', 'removal plan', (at, row) => at.view.node(row)?.name ?? ''),
  term('after', 'steps that must come first', 'joints, blockers, removal plan', (at, row) =>
    labelsOf(at, precedenceOf(at).before.get(row)?.keys() ?? []),
  ),
  term('why', 'why they must come first', 'joints, blockers, removal plan', (at, row) =>
    [...(precedenceOf(at).before.get(row)?.values() ?? [])].join('; '),
  ),
  balance('mass', 'm', 'mass', 'kg', 'mass left'),
  balance('leftX', 'Sₓ', 'massMoment', 'kg.m', 'moment of what is left, X'),
  balance('leftY', 'S_y', 'massMoment', 'kg.m', 'moment of what is left, Y'),
  balance('takenMass', 'mₜ', 'mass', 'kg', 'mass that comes off'),
  balance('takenX', 'Sₜₓ', 'massMoment', 'kg.m', 'moment of what comes off, X'),
  balance('takenY', 'Sₜ_y', 'massMoment', 'kg.m', 'moment of what comes off, Y'),
  balance('x', 'X', 'length', 'mm', 'centre of what is left, X'),
  balance('y', 'Y', 'length', 'mm', 'centre of what is left, Y'),
  balance('z', 'Z', 'length', 'mm', 'centre of what is left, Z'),
  balance('marginX', 'a', 'length', 'mm', 'margin in X'),
  balance('pulledX', 'a_F', 'length', 'mm', 'margin in X with the pull'),
  balance('limitX', 'aₗ', 'length', 'mm', 'margin in X asked for'),
  balance('limitY', 'bₗ', 'length', 'mm', 'margin in Y asked for'),
  balance('spareX', 'Δₓ', 'length', 'mm', 'margin in X beyond what is asked for'),
  balance('spareY', 'Δ_y', 'length', 'mm', 'margin in Y beyond what is asked for'),
  balance('spareArm', 'Δₐ', 'mass', 'kg', 'rating of one arm less its load', true),
  balance('spareLift', 'Δ_R', 'mass', 'kg', 'rating of the lift less its load', true),
];

/** The least of an output over all steps of the plan; the step itself is named by its label. */
export const leastOf = (
  name: string,
  symbol: string,
  kind: Kind,
  unit: string,
  meaning: string,
): ScalarInput => ({
  in: 'scalar',
  ...{ name, symbol, kind, unit },
  meaning: `least ${meaning}`,
  range: [-20000, 20000],
  where: 'balance on the hoist after each step: the worst of them',
  find: (at) =>
    least(
      precedenceOf(at).plan.map((step) => at.ask('hoist-balance', step.id, name)),
      at,
    ),
});

function least(found: readonly Found[], at: Finder): Found {
  const [first, ...more] = found;
  if (!first) return at.missing('removal plan', 'the study has no removal plan');
  return more.reduce((a, b) => {
    if ('missing' in a) return a;
    return 'missing' in b || b.form.x < a.form.x ? b : a;
  }, first);
}
