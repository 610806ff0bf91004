import type { LanguagePack } from '../language/pack.ts';
import { Phrases } from '../words/phrases.ts';
import { nameWords, type PartIndex, type SpokenPart } from './part-index.ts';

/** What people call parts of a tree, singular and plural. */
export function partAliases(
  parts: readonly SpokenPart[],
  index: PartIndex,
  pack: LanguagePack,
): Phrases<readonly SpokenPart[]> {
  const all = new Map<string, readonly SpokenPart[]>();
  for (const [said, means] of pack.aliases) {
    const found = meant(means, parts, index);
    if (found.length === 0) continue;
    for (const phrase of said.endsWith('s') ? [said] : [said, `${said}s`, `${said}'s`])
      all.set(phrase, [...new Set([...(all.get(phrase) ?? []), ...found])]);
  }
  return new Phrases(all);
}

/** What an alias means: a number of the record, the vehicle, or a name of it. */
function meant(
  means: string,
  parts: readonly SpokenPart[],
  index: PartIndex,
): readonly SpokenPart[] {
  if (means === '*vehicle') return parts.filter((part) => part.kind === 'vehicle');
  const own = parts.find((part) => part.label === means);
  if (own) return [own];
  const named = parts.filter((part) => part.name.toLowerCase() === means.toLowerCase());
  if (named.length > 0) return named;
  const words = nameWords(means);
  const fits = index.names.filter((name) =>
    words.every((word) => name.main.includes(word) || name.extra.includes(word)),
  );
  const least = Math.min(...fits.map((name) => name.main.length + name.extra.length));
  const whole = fits.filter(
    (name) => name.main.length + name.extra.length === least || words.length === name.main.length,
  );
  return whole.flatMap((name) => name.parts);
}
