import { type Proportion, proportion } from '../quantity/index.ts';
import { isMissing, type StudyView } from '../study/index.ts';
import type { Library } from './library.ts';

/** How common something is among the studies of a library. */
export interface Common {
  readonly words: string;
  readonly proportion: Proportion;
  readonly having: readonly string[];
  readonly without: readonly string[];
  readonly invented: number;
}

const TEXTS = ['material', 'process', 'type', 'joint.type'];

/** Counts the studies in which a part, joint or bag has all of some words in its name, material, process or kind. */
export async function countInLibrary(library: Library, words: string): Promise<Common> {
  const [having, without]: [string[], string[]] = [[], []];
  let invented = 0;
  for (const { study, title } of await library.studies()) {
    const view = await library.view(study);
    if (view.header.invented) invented++;
    (hasWords(view, words) ? having : without).push(title);
  }
  return {
    words,
    proportion: proportion(having.length, having.length + without.length),
    having,
    without,
    invented,
  };
}

function hasWords(view: StudyView, words: string): boolean {
  const wanted = words
    .toLowerCase()
    .split(/[\s-]+/)
    .filter((word) => word !== '');
  const nodes = (['part', 'assembly', 'joint'] as const).flatMap((kind) => view.nodes(kind));
  return nodes.some((node) => {
    const text = [node.name, ...textsOf(view, node.id)].join(' ').toLowerCase();
    return wanted.every((word) => text.includes(word));
  });
}

const textsOf = (view: StudyView, id: string): string[] =>
  TEXTS.flatMap((property) => {
    const cell = view.cell(id, property);
    return !isMissing(cell) && cell.value.t === 'text' ? [cell.value.text] : [];
  });
