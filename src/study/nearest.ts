/** Words further away than this share of their length are no slip of typing. */
const FAR = 0.4;

/** The candidate that a mistyped word most likely means; undefined when none is near. Case does not count. */
export function nearestWord(word: string, candidates: readonly string[]): string | undefined {
  const ranked = candidates
    .map((candidate) => ({ candidate, d: distance(word.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.d - b.d);
  const [best] = ranked;
  return best && best.d <= FAR * Math.max(word.length, 3) ? best.candidate : undefined;
}

/** Letters to insert, leave out or change to make b of a (Levenshtein). */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(
        Math.min(
          (row[j] ?? 0) + 1,
          (next[j - 1] ?? 0) + 1,
          (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1),
        ),
      );
    row = next;
  }
  return row[b.length] ?? 0;
}

/** "Did you mean mass-closure? " or nothing. */
export function didYouMean(word: string, candidates: readonly string[]): string {
  const near = nearestWord(word, candidates);
  return near === undefined ? '' : `Did you mean ${near}? `;
}
