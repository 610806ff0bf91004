import type { SheetOut } from '../worker/answer-sheet.ts';
import type { Triple } from '../worker/map-model.ts';

/** A centre of gravity to mark: circle with cross, or square with cross. Metres. */
export interface Mark {
  readonly words: string;
  readonly sign: 'circle' | 'square';
  readonly at: Triple;
  /** Standard uncertainties; 0 where not known. */
  readonly u: Triple;
  /** Whether each component is known at all. */
  readonly known: readonly [boolean, boolean, boolean];
  readonly incomplete: boolean;
}

/** A mark from up to three outputs; none without X and Y. */
export function markOf(
  words: string,
  sign: Mark['sign'],
  [x, y, z]: readonly [SheetOut | undefined, SheetOut | undefined, SheetOut | undefined],
): Mark[] {
  if (!x || !y) return [];
  const u = (out: SheetOut | undefined) => (out && out.u !== 'incomplete' ? out.u : 0);
  return [
    {
      words,
      sign,
      at: [x.x, y.x, z?.x ?? 0],
      u: [u(x), u(y), u(z)],
      known: [true, true, z !== undefined],
      incomplete: [x, y, z].some((out) => out?.u === 'incomplete'),
    },
  ];
}
