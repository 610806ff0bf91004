import type { Finding, Place } from '../study/index.ts';
import { type BodyOut, type BodyResult, isMissing } from './body-out.ts';
import type { BoundInputs } from './bound-inputs.ts';

/** One text for a place, to tell places apart. */
export const placeKey = (p: Place): string =>
  [p.study, p.subject, p.property, p.reading, p.file, p.row, p.column].join('\n');

export const distinctPlaces = (places: readonly Place[]): Place[] =>
  places.length < 2 ? [...places] : distinct(places, placeKey);

export const withoutRepeats = (findings: readonly Finding[]): Finding[] =>
  distinct(findings, (f) =>
    [f.code, f.level, f.value, f.what, f.next, placeKey(f.place)].join('\n'),
  );

function distinct<T>(items: readonly T[], key: (item: T) => string): T[] {
  return [...new Map([...new Set(items)].map((item) => [key(item), item])).values()];
}

/** What is missing from the answer and why, each place once. */
export function gapsOf(result: BodyResult, bound: BoundInputs): Finding[] {
  const missing = distinctPlaces(result.outs.flatMap((o) => o.missing));
  const unknown = distinctPlaces(result.outs.flatMap((o) => o.unknownSpread));
  const reasons: ReadonlyMap<string, string> = missing.length > 0 ? reasonsOf(bound) : new Map();
  return [
    ...missing.map(
      (place): Finding => ({
        code: 'missing',
        level: 'gap',
        place,
        what: `missing, and not counted as zero: what depends on it is incomplete (${reasons.get(placeKey(place)) ?? 'there are no rows to sum'})`,
        next: 'Take the reading, or say why there is none.',
      }),
    ),
    ...unknown.map(
      (place): Finding => ({
        code: 'spread-unknown',
        level: 'gap',
        place,
        what: 'the spread of this value is not known: what depends on it is incomplete',
        next: 'State how well it is known, or measure it again with a named instrument.',
      }),
    ),
  ];
}

/** Why each place that is missing has nothing. */
function reasonsOf(bound: BoundInputs): ReadonlyMap<string, string> {
  const rows = Object.values(bound.tables).flat();
  const cells = [...Object.values(bound.scalars), ...rows.flatMap((r) => r.numbers)];
  return new Map(cells.filter(isMissing).map((c) => [placeKey(c.place), c.why]));
}

export const notWorkedOut = (out: BodyOut): Finding => ({
  code: 'not-worked-out',
  level: 'gap',
  place: { property: out.spec.name },
  what: `${out.spec.meaning} could not be worked out`,
  next:
    out.missing.length > 0
      ? 'Take the missing readings first.'
      : 'Check the inputs: the formula has no finite value there.',
});
