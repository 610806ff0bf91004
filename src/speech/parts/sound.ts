/** Letters that sound alike, put for one another in turn. Own rules for English; common practice. */
const SOUNDS: readonly (readonly [RegExp, string])[] = [
  [/^(?:kn|gn|pn)/, 'n'],
  [/^wr/, 'r'],
  [/^ps/, 's'],
  [/ph/g, 'f'],
  [/w(?![aeiou])/g, ''],
  [/gh(?=t|$)/g, ''],
  [/gh/g, 'g'],
  [/tch|ch/g, 'C'],
  [/sch/g, 'S'],
  [/sh|ti(?=o)|ci(?=o|a)|ssi(?=o)/g, 'S'],
  [/th/g, 'T'],
  [/ck/g, 'k'],
  [/c(?=[eiy])/g, 's'],
  [/[cq]/g, 'k'],
  [/dge/g, 'j'],
  [/g(?=[ey])/g, 'j'],
  [/x/g, 'ks'],
  [/z/g, 's'],
  [/mb$/, 'm'],
  [/[vw]/g, 'v'],
  [/le$/, 'l'],
];

/** A word as its consonants sound; vowels count only at the start. */
export function soundOf(word: string): string {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  const heard = SOUNDS.reduce((text, [pattern, sound]) => text.replace(pattern, sound), letters);
  const open = /^[aeiouy]/.test(heard) ? 'a' : '';
  return open + heard.replace(/[aeiouyh]/g, '').replace(/(.)\1+/g, '$1');
}

/** Several words in one breath, as their consonants sound. */
export const soundOfWords = (words: readonly string[]): string =>
  words
    .map((word, i) => (i === 0 ? soundOf(word) : soundOf(word).replace(/^a/, '')))
    .join('')
    .replace(/(.)\1+/g, '$1');

/** Steps of one letter (put in, left out, changed, swapped with the next) between two words. */
export function letterSteps(a: string, b: string): number {
  const rows = Array.from({ length: a.length + 1 }, (_, i) => [
    i,
    ...new Array<number>(b.length).fill(0),
  ]);
  const at = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let j = 0; j <= b.length; j++) if (rows[0]) rows[0][j] = j;
  for (let i = 1; i <= a.length; i++)
    for (let j = 1; j <= b.length; j++) {
      const row = rows[i];
      if (!row) continue;
      const same = a[i - 1] === b[j - 1];
      row[j] = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        row[j] = Math.min(row[j] ?? 0, at(i - 2, j - 2) + 1);
    }
  return at(a.length, b.length);
}

/** Letters at the end that two words must share to rhyme: "ladle" and "cradle". */
const RHYME = 4;
const LIKE_A_RHYME = 0.78;

const LEAST_LETTERS_ALIKE = 0.5;

/** How alike two words are to the ear and in letters: 1 the same, 0 nothing alike. */
export function alike(said: string, name: string): number {
  if (said === name) return 1;
  const [a, b] = [soundOf(said), soundOf(name)];
  const longest = Math.max(said.length, name.length);
  const letters = 1 - letterSteps(said, name) / longest;
  if (
    said.length > 4 &&
    said.slice(-RHYME) === name.slice(-RHYME) &&
    Math.abs(said.length - name.length) < 2
  )
    return Math.max(LIKE_A_RHYME, letters);
  if (a === b && a.length > 0 && letters >= LEAST_LETTERS_ALIKE) return Math.max(0.75, letters);
  const sounds = 1 - letterSteps(a, b) / Math.max(a.length, b.length, 1);
  return 0.5 * letters + 0.5 * sounds;
}
