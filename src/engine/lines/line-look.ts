import type { Finding } from '../../study/index.ts';
import type { Drawing, Figure, Graph, GraphEdge } from '../figure.ts';
import type { BoundLook, DetailTable, FoundRow, Looked } from '../method.ts';
import { type Place, routeOf, routeToRoute } from './route.ts';

/** A line as the census looks at it. */
interface Line {
  readonly name: string;
  readonly kind: string;
  readonly circuit: string;
  readonly through: readonly string[];
  readonly route: readonly Place[] | undefined;
  readonly row: FoundRow;
}

export function lookAtLines({ tables }: BoundLook): Looked {
  const lines = (tables.lines ?? []).map(lineOf);
  const shared = sharedPlaces(lines);
  return {
    detail: lineTable(lines),
    further: [zoneTable(lines), ...(shared.length === 0 ? [] : [sharedTable(shared)])],
    findings: [...lines.flatMap(lineFindings), ...shared.map(sharedFinding)],
    figures: [...byZone(lines, shared), ...planView(lines)],
  };
}

const word = (row: FoundRow, name: string): string => row.terms[name]?.text.trim() ?? '';
const listed = (text: string): string[] =>
  text
    .split(';')
    .map((t) => t.trim())
    .filter((t) => t !== '');
const numberIn = (row: FoundRow, name: string): number | undefined => {
  const cell = row.cells[name];
  return cell && !('missing' in cell) ? cell.form.x : undefined;
};

const lineOf = (row: FoundRow): Line => ({
  name: word(row, 'name') || row.label,
  kind: word(row, 'kind'),
  circuit: word(row, 'circuit') || word(row, 'name'),
  through: listed(word(row, 'through')),
  route: routeOf(word(row, 'route')),
  row,
});

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

function lineFindings({ name, through, route, row }: Line): Finding[] {
  const open = (['from', 'to'] as const).filter((end) => word(row, end) === '');
  const written = word(row, 'route');
  const [bend, limit] = [numberIn(row, 'bend'), numberIn(row, 'bendLimit')];
  return [
    ...open.map((end) =>
      found(
        'gap',
        'line-ends-nowhere',
        name,
        'ends-at',
        end === 'from' ? 'the line starts at nothing' : 'the line leads to nothing',
        'Name the part or assembly at that end.',
      ),
    ),
    ...(through.length === 0
      ? [
          found(
            'gap',
            'line-without-zone',
            name,
            'runs-through',
            'no zone is named that the line runs through',
            'Name the zones in order; else nothing can be said of what it shares.',
          ),
        ]
      : []),
    ...(written !== '' && !route
      ? [
          found(
            'doubt',
            'route-not-read',
            name,
            'line.route',
            'the route is no list of points',
            'Write x y z in mm, points parted by semicolons.',
            written,
          ),
        ]
      : []),
    ...(bend !== undefined && limit !== undefined && bend < limit
      ? [
          found(
            'doubt',
            'bend-too-tight',
            name,
            'line.bend',
            'the smallest bend is tighter than allowed',
            'Measure it again, and look for a kink.',
            `${(1000 * bend).toFixed(0)} mm under ${(1000 * limit).toFixed(0)} mm`,
          ),
        ]
      : []),
  ];
}

/** Two circuits of one kind in one zone: what happens there takes both. */
interface Shared {
  readonly zone: string;
  readonly kind: string;
  readonly circuits: readonly string[];
  readonly lines: readonly Line[];
}

function sharedPlaces(lines: readonly Line[]): readonly Shared[] {
  const places = new Map<string, Line[]>();
  for (const line of lines)
    for (const zone of line.through) {
      const key = `${zone}\n${line.kind}`;
      places.set(key, [...(places.get(key) ?? []), line]);
    }
  return [...places].flatMap(([key, of]) => {
    const [zone = '', kind = ''] = key.split('\n');
    const circuits = [...new Set(of.map((l) => l.circuit))].sort();
    return circuits.length > 1 ? [{ zone, kind, circuits, lines: of }] : [];
  });
}

const sharedFinding = ({ zone, kind, circuits }: Shared): Finding =>
  found(
    'doubt',
    'circuits-share-place',
    zone,
    'runs-through',
    `${circuits.length} ${kind} circuits run through this zone: one event there may take them all (common practice, no source)`,
    'Look whether one stands in for the other, and how far apart they run.',
    circuits.join(', '),
  );

/** Least distance between lines of different circuits, m; NaN without routes. */
function apart({ lines }: Shared): number {
  const far = lines.flatMap((a, i) =>
    lines
      .slice(i + 1)
      .filter((b) => b.circuit !== a.circuit)
      .flatMap((b) => (a.route && b.route ? [routeToRoute(a.route, b.route)] : [])),
  );
  return far.length === 0 ? Number.NaN : Math.min(...far);
}

function sharedTable(shared: readonly Shared[]): DetailTable {
  return {
    title: 'Circuits that share one place',
    columns: [
      { name: 'zone' },
      { name: 'kind' },
      { name: 'circuits' },
      { name: 'least distance of their routes', kind: 'length', unit: 'mm' },
    ],
    rows: shared.map((s) => {
      const far = apart(s);
      return [s.zone, s.kind, s.circuits.join(', '), Number.isNaN(far) ? 'no route' : far];
    }),
  };
}

function zoneTable(lines: readonly Line[]): DetailTable {
  const zones = [...new Set(lines.flatMap((l) => l.through))];
  const circuitsIn = (zone: string) =>
    new Set(lines.flatMap((l) => (l.through.includes(zone) ? [l.circuit] : [])));
  return {
    title: 'Circuits by zone: what happens there may take all of them',
    columns: [{ name: 'zone' }, { name: 'circuits', kind: 'count' }, { name: 'which' }],
    rows: zones.map((zone) => [zone, circuitsIn(zone).size, [...circuitsIn(zone)].join(', ')]),
  };
}

function lineTable(lines: readonly Line[]): DetailTable {
  return {
    title: 'Lines',
    columns: [
      { name: 'line' },
      { name: 'kind' },
      { name: 'circuit' },
      { name: 'from' },
      { name: 'to' },
      { name: 'through' },
      { name: 'length', kind: 'length', unit: 'm' },
      { name: 'smallest bend', kind: 'length', unit: 'mm' },
      { name: 'nearest crush zone' },
      { name: 'nearest wall' },
      { name: 'replaced' },
    ],
    rows: lines.map(({ name, kind, circuit, through, row }) => [
      name,
      kind,
      circuit,
      word(row, 'from') || 'nowhere',
      word(row, 'to') || 'nowhere',
      through.join(' → '),
      numberIn(row, 'length') ?? 'not known',
      numberIn(row, 'bend') ?? 'not known',
      word(row, 'crush'),
      word(row, 'face'),
      word(row, 'replaced'),
    ]),
  };
}

/** More than these are read better in the table. */
const MOST = 24;

/** Circuits above, the zones they run through below; bold where circuits of one kind share a zone. */
function byZone(lines: readonly Line[], shared: readonly Shared[]): readonly Figure[] {
  const circuits = [...new Set(lines.map((l) => l.circuit))];
  const zones = [...new Set(lines.flatMap((l) => l.through))];
  if (zones.length === 0 || circuits.length + zones.length > MOST) return [];
  const isShared = (zone: string, circuit: string) =>
    shared.some((s) => s.zone === zone && s.circuits.includes(circuit));
  const pairs = new Map(
    lines.flatMap((l) => l.through.map((zone) => [`${l.circuit}\n${zone}`, [l.circuit, zone]])),
  );
  const edges = [...pairs.values()].map(([circuit = '', zone = '']): GraphEdge => {
    const strong = isShared(zone, circuit);
    return { from: `c ${circuit}`, to: `z ${zone}`, ...(strong ? { strong } : {}) };
  });
  const graph: Graph = {
    f: 'graph',
    title: 'Circuits by zone',
    alt: 'Circuits above, the zones that they run through below; bold where several circuits of one kind run through one zone.',
    nodes: [
      ...circuits.map((c) => ({ id: `c ${c}`, label: c })),
      ...zones.map((z) => ({
        id: `z ${z}`,
        label: z,
        ...(shared.some((s) => s.zone === z) ? { strong: true as const } : {}),
      })),
    ],
    edges,
  };
  return [graph];
}

/** The routes seen from above. */
function planView(lines: readonly Line[]): readonly Drawing[] {
  const drawn = lines.flatMap((l) =>
    l.route && l.route.length > 1 ? [{ ...l, at: l.route }] : [],
  );
  if (drawn.length === 0 || drawn.length > MOST) return [];
  return [
    {
      f: 'drawing',
      title: 'Routes in plan',
      alt: 'The routes of the lines seen from above, front to the left, each named at its end.',
      kind: 'length',
      unit: 'mm',
      axes: { x: 'X', y: 'Y' },
      shapes: drawn.flatMap(({ name, at }) => {
        const last = at.at(-1) ?? at[0];
        return [
          {
            s: 'line' as const,
            line: 'continuous' as const,
            points: at.map(([x, y]) => [x, y] as const),
          },
          ...(last
            ? [
                {
                  s: 'mark' as const,
                  at: [last[0], last[1]] as const,
                  sign: 'point' as const,
                  label: name,
                },
              ]
            : []),
        ];
      }),
    },
  ];
}
