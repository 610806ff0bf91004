import {
  type Finding,
  type Id,
  NODE_KINDS,
  propertyWords,
  type StudyView,
} from '../../../src/study/index.ts';
import type { AnswerSheet } from './answer-sheet.ts';
import { nodeWords, onceNamed } from './node-words.ts';

/** One kind of thing that is not known or in doubt, and every place where it is. */
export interface Gap {
  readonly level: 'gap' | 'doubt';
  readonly code: string;
  readonly words: string;
  readonly what: string;
  readonly next: string;
  readonly places: readonly GapPlace[];
}

export interface GapPlace {
  readonly words: string;
  /** The cell to be filled, where it is one of a node's. */
  readonly cell?: { readonly subject: Id; readonly property: string };
  readonly node?: Id;
  readonly value?: string;
}

/** What is not known, and what is in doubt, from all answers: alike ones together, the most frequent last. */
export function gapsOf(view: StudyView, answers: readonly AnswerSheet[]): Gap[] {
  const ids = idsByWords(view);
  const groups = new Map<string, { first: Finding; places: Map<string, GapPlace> }>();
  const asked = answers.flatMap((a) => [`${a.title}, `, `${a.question}, `]);
  for (const finding of answers.flatMap((a) => a.findings)) {
    if (finding.level === 'note' || !hasItsPlace(finding, asked)) continue;
    const key = `${finding.code} ${finding.code === 'missing' ? finding.place.property : ''}`;
    const group = groups.get(key) ?? { first: finding, places: new Map() };
    const place = placeOf(finding, ids);
    group.places.set(place.words, place);
    groups.set(key, group);
  }
  return [...groups.values()]
    .map(({ first, places }) => ({
      level: first.level === 'gap' ? ('gap' as const) : ('doubt' as const),
      code: first.code,
      words: wordsOf(first),
      what: first.what,
      next: first.next,
      places: [...places.values()],
    }))
    .sort((a, b) => a.places.length - b.places.length);
}

/**
 * False for what is only handed on from another answer, which lists its own causes, and for a
 * table without rows, which is no reading that could be taken.
 */
function hasItsPlace({ code, place }: Finding, asked: readonly string[]): boolean {
  if (code !== 'missing' && code !== 'spread-unknown') return true;
  const { subject = '', property } = place;
  return subject === '' ? property !== undefined : !asked.some((a) => subject.startsWith(a));
}

/** Nodes by the words that findings name them with: number and name, or the number alone. */
function idsByWords(view: StudyView): Map<string, Id> {
  const ids = new Map<string, Id>();
  for (const kind of NODE_KINDS)
    for (const node of view.nodes(kind))
      for (const words of [node.label, nodeWords(node)])
        if (!ids.has(words)) ids.set(words, node.id);
  return ids;
}

const WORDS: Readonly<Record<string, string>> = {
  missing: 'No value',
  'spread-unknown': 'Spread not known',
  'not-worked-out': 'Could not be worked out',
  'not-costed': 'Not costed',
};

const wordsOf = ({ code, place, what }: Finding): string =>
  code === 'missing' && place.property !== undefined
    ? `No reading of ${propertyWords(place.property)}`
    : (WORDS[code] ?? `${what.charAt(0).toUpperCase()}${what.slice(1)}`);

function placeOf({ place, value }: Finding, ids: ReadonlyMap<string, Id>): GapPlace {
  const { subject = '', property } = place;
  const words = subject === '' ? propertyWords(property ?? 'the study') : onceNamed(subject);
  const node = ids.get(words);
  return {
    words,
    ...(node ? { node } : {}),
    ...(node && property !== undefined ? { cell: { subject: node, property } } : {}),
    ...(value === undefined ? {} : { value }),
  };
}
