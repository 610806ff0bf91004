import type { LanguagePack } from '../language/pack.ts';
import type { Mention } from '../parts/mentions.ts';
import { phraseSet } from '../words/phrases.ts';
import type { Token } from '../words/tokens.ts';
import type { Fact } from './fact.ts';
import { NumberFacts } from './number-facts.ts';
import { TermFacts } from './term-facts.ts';

/** All that the words state, left to right, denied or not; and where numbers stand that state nothing by themselves. */
export function findFacts(
  tokens: readonly Token[],
  mentions: readonly Mention[],
  pack: LanguagePack,
): { readonly facts: Fact[]; readonly bare: number[] } {
  const numbers = new NumberFacts(tokens, pack);
  const terms = new TermFacts(tokens, pack);
  const named = new Map(mentions.map((m) => [m.from, m]));
  const facts: Fact[] = [];
  const bare: number[] = [];
  const supplied = phraseSet(pack.ways.supplied);
  let at = 0;
  let aside = 0;
  let inside: Mention | undefined;
  while (at < tokens.length) {
    const mention = named.get(at);
    if (mention) inside = mention;
    if (inside && at >= inside.to) inside = undefined;
    const fact =
      (inside ? undefined : numbers.at(at, (i) => named.get(i))) ??
      openTerm(terms.at(at), inside, at < aside);
    if (fact === undefined) at++;
    else if ('passed' in fact) {
      bare.push(at);
      at = fact.passed;
    } else if (
      fact.kind === 'direction' &&
      mentions.some((m) => m.from > at && m.from < fact.to && m.to > fact.to)
    )
      at++;
    else if (!fact.quantity && supplied.at(tokens, at)) at++;
    else if (fact.kind === 'reason' && !hasSubject(fact, tokens, mentions, facts)) at++;
    else {
      facts.push(fact);
      const wide = fact.kind === 'reason' || fact.kind === 'comparison';
      if (wide) aside = fact.to;
      at = wide ? at + 1 : fact.to;
    }
  }
  return { facts, bare };
}

/** A term that is the very name of a part is none; in a reason or behind "than" it is of something else. */
function openTerm(
  fact: Fact | undefined,
  inside: Mention | undefined,
  aside: boolean,
): Fact | undefined {
  if (!fact || aside) return undefined;
  if (inside && fact.to >= inside.to && fact.from < inside.to) return undefined;
  if (inside && fact.kind === 'joint') return undefined;
  return fact;
}

/** A reason is of something: a part or a fact named in the same turn, or shortly before. */
function hasSubject(
  reason: Fact,
  tokens: readonly Token[],
  mentions: readonly Mention[],
  facts: readonly Fact[],
): boolean {
  const turn = tokens[reason.from]?.turn;
  return [...mentions, ...facts].some(
    ({ from, to }) => to <= reason.from && (tokens[from]?.turn === turn || reason.from - to < 25),
  );
}
