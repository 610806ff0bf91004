import type { Finding } from '../study/index.ts';
import type { FindingGroup } from './model.ts';
import { placeWords } from './wording.ts';

const LEVELS: readonly Finding['level'][] = ['gap', 'doubt', 'note'];

/** Findings that say the same of several places, taken together; what is missing comes first. */
export function groupFindings(findings: readonly Finding[]): FindingGroup[] {
  const groups = new Map<string, { first: Finding; at: Map<string, FindingGroup['at'][number]> }>();
  for (const f of findings) {
    const key = [f.level, f.code, f.what, f.next].join('\n');
    const group = groups.get(key) ?? { first: f, at: new Map() };
    groups.set(key, group);
    const at = { place: placeWords(f.place), value: f.value ?? '' };
    group.at.set(`${at.place}\n${at.value}`, at);
  }
  return [...groups.values()]
    .map(({ first: { code, level, what, next }, at }) => {
      return { code, level, what, next, at: [...at.values()] };
    })
    .sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level));
}
