import { type Finding, type Place, propertyWords } from '../study/index.ts';
import { type BodyOut, type BodyResult, isMissing } from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';
import type { Found } from './method.ts';

/** One text for a place, to tell places apart. */
export const placeKey = (p: Place): string =>
  [p.study, p.subject, p.property, p.reading, p.file, p.row, p.column].join('\n');

export const distinctPlaces = (places: readonly Place[]): Place[] =>
  places.length < 2 ? [...places] : distinct(places, placeKey);

/** Each finding once; what could not be worked out stands behind the readings it waits for. */
export const withoutRepeats = (findings: readonly Finding[]): Finding[] =>
  distinct(findings, (f) =>
    [f.code, f.level, f.value, f.what, f.next, placeKey(f.place)].join('\n'),
  ).sort((a, b) => Number(a.code === NOT_WORKED_OUT) - Number(b.code === NOT_WORKED_OUT));

const NOT_WORKED_OUT = 'not-worked-out';

function distinct<T>(items: readonly T[], key: (item: T) => string): T[] {
  return [...new Map([...new Set(items)].map((item) => [key(item), item])).values()];
}

/** What is missing from the answer and why, each place once. */
export function gapsOf(result: BodyResult, bound: BoundInputs): Finding[] {
  const missing = distinctPlaces(result.outs.flatMap((o) => o.missing));
  const unknown = distinctPlaces(result.outs.flatMap((o) => o.unknownSpread));
  const behind = missing.length + unknown.length > 0 ? cellsOf(bound) : new Map<string, Found>();
  return [
    ...missing.map(
      (place): Finding => ({
        code: 'missing',
        level: 'gap',
        place,
        ...namedInput(place, behind.get(placeKey(place))),
        what: `missing, and not counted as zero: what depends on it is incomplete (${whyMissing(behind.get(placeKey(place)))})`,
        next: 'Take the reading, or say why there is none.',
      }),
    ),
    ...unknown.map(
      (place): Finding => ({
        code: 'spread-unknown',
        level: 'gap',
        place,
        ...namedInput(place, behind.get(placeKey(place))),
        ...unknownWords(behind.get(placeKey(place))),
      }),
    ),
  ];
}

function cellsOf(bound: BoundInputs): ReadonlyMap<string, Found> {
  const rows = Object.values(bound.tables).flat();
  const cells = [...Object.values(bound.scalars), ...rows.flatMap((r) => r.numbers)];
  return new Map(cells.map((c) => [placeKey(c.place), c]));
}

/** Why there is nothing; the property stands in the place, so that like reasons read alike. */
function whyMissing(found: Found | undefined): string {
  if (!found || !isMissing(found)) return 'nothing of this is recorded yet';
  const { property } = found.place;
  const words = property === undefined ? '' : `${propertyWords(property)}: `;
  return found.why.startsWith(words) ? found.why.slice(words.length) : found.why;
}

/** The meaning of an input that was to be given by its name. */
const namedInput = (
  { subject, column }: Place,
  found: Found | undefined,
): Pick<Finding, 'value'> =>
  subject === undefined && column !== undefined && found ? { value: found.label } : {};

/** A result of another question can't be measured again: what it lacks is found beside it. */
function unknownWords(found: Found | undefined): Pick<Finding, 'what' | 'next'> {
  if (found && !isMissing(found) && found.how === 'calculated')
    return {
      what: 'this result is itself not complete: what depends on it is not either',
      next: 'Take the readings it lacks: they are found beside it.',
    };
  return {
    what: 'the spread of this value is not known: what depends on it is incomplete',
    next: 'State how well it is known, or measure it again with a named instrument.',
  };
}

export const notWorkedOut = (out: BodyOut): Finding => ({
  code: NOT_WORKED_OUT,
  level: 'gap',
  place: { property: out.spec.meaning },
  what: 'could not be worked out',
  next:
    out.missing.length > 0
      ? 'Take the missing readings first.'
      : 'Check the inputs: the formula has no finite value there.',
});
