/** Values asked for in one query: below what any database allows, and few distinct statements. */
const PIECE = 400;

/** Cuts a long list into lists short enough for one query. */
export function* inPieces<T>(all: readonly T[], size = PIECE): Generator<T[]> {
  for (let from = 0; from < all.length; from += size) yield all.slice(from, from + size);
}
