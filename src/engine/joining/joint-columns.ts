import type { Id } from '../../study/index.ts';
import type { Finder, ScalarColumn, TableInput, TermColumn } from '../method.ts';

/** Joints of which one end is the subject or below it; all of them for the vehicle. */
export function jointsOf(at: Finder): readonly Id[] {
  const all = at.view.nodes('joint').map((n) => n.id);
  if (at.view.root()?.id === at.subject) return all;
  const inside = new Set(
    ['part', 'assembly'].flatMap((kind) =>
      at.view.nodes(kind as 'part', at.subject).map((n) => n.id),
    ),
  );
  return all.filter((id) =>
    at.view.links('joins', id).some((l) => l.to !== null && inside.has(l.to)),
  );
}

export const jointCount: ScalarColumn = {
  in: 'scalar',
  name: 'count',
  symbol: 'n',
  kind: 'count',
  unit: '1',
  meaning: 'count by holes',
  range: [1, 5000],
  bounds: { atLeast: 0 },
  where: 'count by holes of the joint',
  find: (at, row) => at.number(row, 'count.holes'),
};

const time = (name: 'access' | 'drive', symbol: string, meaning: string): ScalarColumn => ({
  in: 'scalar',
  name,
  symbol,
  kind: 'time',
  unit: 's',
  meaning,
  range: [0, 600],
  bounds: { atLeast: 0 },
  where: `${meaning} of the joint`,
  find: (at, row) => at.number(row, `time.${name}`),
});

export const accessTime = time('access', 'tₐ', 'time to reach, each');
export const driveTime = time('drive', 'tᵈ', 'time to drive, each');

/** A word recorded of the joint. */
export const jointTerm = (name: string, property: string, meaning: string): TermColumn => ({
  in: 'term',
  name,
  meaning,
  where: `${meaning} of the joint`,
  find: (at, row) => at.text(row, property),
});

export const jointType = jointTerm('type', 'type', 'kind of joint');
export const jointSpec = jointTerm('spec', 'spec', 'specification');

/** A table of joints with the columns wanted. */
export const jointTable = (...columns: TableInput['columns']): TableInput => ({
  in: 'table',
  name: 'joints',
  meaning: 'one group of joints of one kind',
  where: 'every joint that holds the subject or something below it',
  rows: jointsOf,
  columns,
});
