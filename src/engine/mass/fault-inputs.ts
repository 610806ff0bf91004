import type { TableInput } from '../method.ts';

/** Totes with what they weigh empty. */
export const TARES: TableInput = {
  in: 'table',
  name: 'tares',
  meaning: 'a tote in which parts are weighed',
  where: 'trials of the vehicle with the mass of an empty tote',
  rows: (at) =>
    at.view
      .nodes('trial', at.subject)
      .filter((n) => at.view.properties(n.id).includes('tareMass'))
      .map((n) => n.id),
  columns: [
    {
      in: 'scalar',
      name: 'tare',
      symbol: 't',
      kind: 'mass',
      unit: 'kg',
      meaning: 'mass of the empty tote',
      range: [0.01, 50],
      bounds: { above: 0 },
      where: 'mass of the empty tote',
      find: (at, row) => at.number(row, 'tareMass'),
    },
  ],
};

/** Joints with what they hold: which fasteners belong to which part. */
export const JOINT_ENDS: TableInput = {
  in: 'table',
  name: 'joints',
  meaning: 'one group of joints of one kind',
  where: 'every joint of the vehicle',
  rows: (at) => at.view.nodes('joint').map((n) => n.id),
  columns: [
    {
      in: 'term',
      name: 'spec',
      meaning: 'specification of the fastener',
      where: 'specification of the joint',
      find: (at, row) => at.text(row, 'spec'),
    },
    {
      in: 'scalar',
      name: 'count',
      symbol: 'n',
      kind: 'count',
      unit: '1',
      meaning: 'count by holes',
      range: [1, 5000],
      bounds: { atLeast: 0 },
      optional: true,
      where: 'count by holes of the joint',
      find: (at, row) => at.number(row, 'count.holes'),
    },
    {
      in: 'term',
      name: 'ends',
      meaning: 'numbers of what it holds, parted by semicolons',
      where: 'what the joint holds',
      find: (at, row) =>
        at.word(
          at.view
            .links('joins', row)
            .flatMap((l) => (l.to === null ? [] : (at.view.node(l.to)?.label ?? [])))
            .join(';'),
        ),
    },
  ],
};
