/** Calls kept of each function: more than the shifted calls of one answer. */
const KEPT = 64;

/**
 * A pure function that keeps its last results by its arguments. An answer calls its body again
 * for every input that moves, and most of them scale a result that is the costly part. What is
 * kept changes no answer: the same arguments give the same value.
 */
export function remembered<A extends readonly unknown[], R>(
  make: (...of: A) => R,
): (...of: A) => R {
  const kept = new Map<string, R>();
  return (...of) => {
    const key = JSON.stringify(of);
    if (kept.has(key)) return kept.get(key) as R;
    const made = make(...of);
    const [oldest] = kept.keys();
    if (kept.size >= KEPT && oldest !== undefined) kept.delete(oldest);
    kept.set(key, made);
    return made;
  };
}
