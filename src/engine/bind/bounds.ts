import { fromSi, unitSymbol } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import type { Found, ScalarColumn, ScalarInput } from '../method.ts';

type Bounded = Pick<
  ScalarInput | ScalarColumn,
  'name' | 'kind' | 'unit' | 'range' | 'bounds' | 'meaning'
>;

/** Why a number can't be used at all, in words; undefined when it can. */
export function outOfBounds(input: Bounded, x: number): string | undefined {
  const shown = fromSi(x, input.unit, input.kind);
  const { above, below, atLeast } = input.bounds ?? {};
  const unit = input.unit === '1' ? '' : ` ${unitSymbol(input.unit)}`;
  if (!Number.isFinite(x)) return `${input.meaning} must be a finite number`;
  if (above !== undefined && !(shown > above))
    return `${input.meaning} must be above ${above}${unit}`;
  if (below !== undefined && !(shown < below))
    return `${input.meaning} must be below ${below}${unit}`;
  if (atLeast !== undefined && !(shown >= atLeast))
    return `${input.meaning} must be at least ${atLeast}${unit}`;
  return undefined;
}

/** A cell from a study: outside its bounds it counts as missing, outside its plausible range it is found. */
export function withinBounds(input: Bounded, found: Found, findings: Finding[]): Found {
  if ('missing' in found) return found;
  const why = outOfBounds(input, found.form.x);
  if (why) return { missing: true, place: found.place, label: found.label, why };
  const finding = implausible(input, found);
  if (finding) findings.push(finding);
  return found;
}

/** A value outside the plausible range, as a finding. */
export function implausible(
  input: Bounded,
  found: Exclude<Found, { missing: true }>,
): Finding | undefined {
  const shown = fromSi(found.form.x, input.unit, input.kind);
  const [low, high] = input.range;
  if (shown >= low && shown <= high) return undefined;
  const unit = input.unit === '1' ? '' : ` ${unitSymbol(input.unit)}`;
  return {
    code: 'outside-plausible-range',
    level: 'doubt',
    place: found.place,
    value: `${Number(shown.toPrecision(6))}${unit}`,
    what: `${input.meaning} is outside the plausible range of ${low} to ${high}${unit}`,
    next: 'Look at the reading again: unit, decimal sign, subject.',
  };
}
