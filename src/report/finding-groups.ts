import type { Finding } from '../study/index.ts';
import type { FindingGroup } from './model.ts';
import { placeWords } from './wording.ts';

const LEVELS: readonly Finding['level'][] = ['gap', 'doubt', 'note'];

/** Findings that say the same of several places, taken together; what is missing comes first. */
export function groupFindings(findings: readonly Finding[]): FindingGroup[] {
  const groups = new Map<string, FindingGroup & { at: { place: string; value: string }[] }>();
  for (const f of findings) {
    const key = [f.level, f.code, f.what, f.next].join('\n');
    const group = groups.get(key) ?? {
      code: f.code,
      level: f.level,
      what: f.what,
      next: f.next,
      at: [],
    };
    groups.set(key, group);
    const at = { place: placeWords(f.place), value: f.value ?? '' };
    if (!group.at.some((a) => a.place === at.place && a.value === at.value)) group.at.push(at);
  }
  return [...groups.values()].sort((a, b) => LEVELS.indexOf(a.level) - LEVELS.indexOf(b.level));
}
