import type { LinearForm, VariableId } from '../../quantity/index.ts';
import { formOfOut } from '../answer-forms.ts';
import { GIVEN } from '../bind/bind-written.ts';
import type { Answer, Out, Variable } from '../method.ts';
import type { CompareOptions, SharedCause } from './comparison.ts';

/** Contributions of two sides and of their difference, variable by variable. */
export interface DifferenceForm {
  readonly x: number;
  readonly by: ReadonlyMap<VariableId, { a: number; b: number; variable: Variable }>;
}

/** Number of shared causes that are told. */
const TOLD = 5;

/**
 * First less second. Variables are shared where they are the same thing: a rate, a scale's gain,
 * a published value, a reading, the part of a method's error common to all it is used on. What
 * was written by hand, the frame of another study and a method's error on one subject are not,
 * unless it is said so.
 */
export function differenceForm(
  a: { readonly answer: Answer; readonly out: Out },
  b: { readonly answer: Answer; readonly out: Out },
  options: CompareOptions,
): DifferenceForm {
  const by = new Map<VariableId, { a: number; b: number; variable: Variable }>();
  const sameStudy = a.answer.basis.study === b.answer.basis.study;
  for (const [id, c] of formOfOut(a.out).by) {
    const variable = a.answer.variables[id];
    if (c !== 0 && variable) by.set(id, { a: c, b: 0, variable });
  }
  for (const [id, c] of formOfOut(b.out).by) {
    const variable = b.answer.variables[id];
    if (c === 0 || !variable) continue;
    const key = isShared(variable, sameStudy, options) ? id : `${id} (second)`;
    const held = by.get(key);
    if (held) held.b = c;
    else by.set(key, { a: 0, b: c, variable });
  }
  return { x: a.out.x - b.out.x, by };
}

/** True where a variable of this id on the other side would be the same thing. */
function isShared(
  variable: Variable,
  sameStudy: boolean,
  { shares = [] }: CompareOptions,
): boolean {
  const { id, what } = variable;
  if (id.startsWith('given:')) return shares.includes(id.slice('given:'.length));
  if (what === 'frame' || what === 'specimen') return sameStudy;
  return !(what === 'model' && id.endsWith(`/${GIVEN}`));
}

/** Linear form of a difference, for its spread. */
export const formOf = ({ x, by }: DifferenceForm): LinearForm => ({
  x,
  by: new Map([...by].map(([id, { a, b }]) => [id, a - b])),
});

/** What both sides share, the largest first. */
export function sharedCauses({ by }: DifferenceForm): SharedCause[] {
  return [...by]
    .filter(([, { a, b }]) => a !== 0 && b !== 0)
    .map(([id, { a, b, variable }]) => ({
      ...{ id, label: variable.label, what: variable.what },
      ...{ a, b, left: a - b },
    }))
    .sort((x, y) => size(y) - size(x))
    .slice(0, TOLD);
}

const size = ({ a, b }: SharedCause): number => Math.hypot(a, b);
