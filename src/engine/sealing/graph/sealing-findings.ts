import type { Finding } from '../../../study/index.ts';
import type { Crossing, SealingGraph } from './sealing-graph.ts';

const found = (
  level: Finding['level'],
  code: string,
  subject: string,
  property: string,
  what: string,
  next: string,
  value?: string,
): Finding => ({
  code,
  level,
  place: { subject, property },
  ...(value === undefined ? {} : { value }),
  what,
  next,
});

/** What is missing in a record of zones, barriers and crossings, by name of what it is missing of. */
export const sealingFindings = (graph: SealingGraph): readonly Finding[] => [
  ...zoneFindings(graph),
  ...barrierFindings(graph),
  ...graph.crossings.flatMap(crossingFindings),
];

function zoneFindings({ input }: SealingGraph): Finding[] {
  const touched = new Set(input.barriers.flatMap(({ a, b }) => [a, b]));
  return input.zones.flatMap(({ name, medium }) => [
    ...(touched.has(name)
      ? []
      : [
          found(
            'gap',
            'zone-touches-nothing',
            name,
            'separates',
            'no barrier parts this zone from another',
            'Record what bounds it, or take it out.',
          ),
        ]),
    ...(medium
      ? []
      : [
          found(
            'gap',
            'medium-unknown',
            name,
            'zone.medium',
            'whether this zone is wet, drained, dry or holds a fluid is not told by its words',
            'Write one of these words in its medium.',
          ),
        ]),
  ]);
}

const barrierFindings = ({ input }: SealingGraph): Finding[] =>
  input.barriers.flatMap(({ name, a, b }) =>
    a !== undefined && b !== undefined
      ? []
      : [
          found(
            'gap',
            'barrier-open-side',
            name,
            'separates',
            'the barrier parts no two zones of the record',
            'Name the zone on each side of it.',
          ),
        ],
  );

function crossingFindings(c: Crossing): Finding[] {
  const { name, seal } = c.in;
  const bare = c.barriers.length === 0 && !c.end;
  return [
    ...(bare
      ? [
          found(
            'gap',
            'crossing-without-barrier',
            name,
            'crosses',
            'the crossing goes through no barrier that is known',
            'Name what it goes through, or give its place, direction and length so that it is found.',
          ),
        ]
      : []),
    ...(c.barriers.length > 0 && !c.zones
      ? [
          found(
            'gap',
            'crossing-without-ends',
            name,
            'crosses',
            'the barriers that it goes through make no chain from zone to zone',
            'Correct the zones of these barriers, or what the crossing goes through.',
            c.barriers.map((b) => b.name).join('; '),
          ),
        ]
      : []),
    ...(c.seal
      ? []
      : [
          found(
            'doubt',
            'seal-unknown',
            name,
            'crossing.seal',
            'how it is sealed is not told by its words; it is taken as not sealed',
            'Write what seals it: cord, sealer, ring, weld, none.',
            seal,
          ),
        ]),
  ];
}
