import type { Drawing, DrawingShape, FigurePoint } from '../figure.ts';
import type { DetailTable, Out, PlainInputs } from '../method.ts';
import { rearward, toTheRight } from './corner-loads.ts';
import { CENTRE_COLUMNS } from './module-closure.ts';

type Outs = Readonly<Record<string, Out>>;

/** Room before the front axle and behind the rear one, as a share of the wheelbase. */
const OVERHANG = 0.3;

/** The gaps of a balance as arrows at their places: in force from the side, in moments in plan. */
export function gapDrawings(
  { scalars }: PlainInputs,
  outs: Outs,
  modules: DetailTable | undefined,
): Drawing[] {
  const at = (name: string): number => scalars[name] ?? Number.NaN;
  const loads = [at('fl'), at('fr'), at('rl'), at('rr')] as const;
  const [wheelbase, height] = [at('wheelbase'), at('height')];
  const tracks = [at('frontTrack'), at('rearTrack')] as const;
  const x = rearward(...loads, wheelbase);
  const y = toTheRight(...loads, ...tracks);
  const { force, momentX, momentY } = outs;
  const drawn: Drawing[] = [];
  if (force && [x, height].every(Number.isFinite))
    drawn.push(fromTheSide(wheelbase, [x, height], force.x, modules));
  if (momentX && momentY && [x, y].every(Number.isFinite))
    drawn.push(inPlan(wheelbase, tracks, [x, y], [momentX.x, momentY.x]));
  return drawn;
}

const axleMarks = (points: readonly FigurePoint[]): DrawingShape[] =>
  points.map((at) => ({ s: 'mark', at, sign: 'point', label: '' }));

const along = (wheelbase: number, y: number, line: 'continuous' | 'chain'): DrawingShape => ({
  s: 'line',
  points: [
    [-OVERHANG * wheelbase, y],
    [(1 + OVERHANG) * wheelbase, y],
  ],
  line,
});

function fromTheSide(
  wheelbase: number,
  centre: FigurePoint,
  gap: number,
  modules: DetailTable | undefined,
): Drawing {
  return {
    f: 'drawing',
    title: 'Gaps in force at their places, from the side',
    alt: 'Arrows at the centres of the vehicle and of its modules: up where the parts weigh more than the scale, down where they weigh less.',
    kind: 'length',
    unit: 'mm',
    axes: { x: 'X rearward', y: 'Z up' },
    vectors: { kind: 'mass', unit: 'kg' },
    shapes: [
      along(wheelbase, 0, 'continuous'),
      ...axleMarks([
        [0, 0],
        [wheelbase, 0],
      ]),
      { s: 'mark', at: centre, sign: 'centroid', label: '' },
      { s: 'vector', at: centre, by: [0, gap], label: 'whole vehicle' },
      ...(modules ? moduleArrows(modules) : []),
    ],
  };
}

/** One arrow a module that has parts with a place. */
function moduleArrows({ columns, rows }: DetailTable): DrawingShape[] {
  const place = (name: string) => columns.findIndex((c) => c.name === name);
  const [label, gap] = [place('module'), place('gap')];
  const [x, , z] = CENTRE_COLUMNS.map(place) as [number, number, number];
  return rows.flatMap((row): DrawingShape[] => {
    const [at, up, by] = [row[x], row[z], row[gap]];
    if (typeof at !== 'number' || typeof up !== 'number' || typeof by !== 'number') return [];
    return [
      { s: 'mark', at: [at, up], sign: 'point', label: '' },
      { s: 'vector', at: [at, up], by: [0, by], label: String(row[label]) },
    ];
  });
}

const inPlan = (
  wheelbase: number,
  [front, rear]: readonly [number, number],
  centre: FigurePoint,
  gap: FigurePoint,
): Drawing => ({
  f: 'drawing',
  title: 'Gap in moments about the centre of gravity by the scales, in plan',
  alt: 'An arrow from the centre of gravity by the scales: where to the parts have too much moment.',
  kind: 'length',
  unit: 'mm',
  axes: { x: 'X rearward', y: 'Y right' },
  vectors: { kind: 'massMoment', unit: 'kg.m' },
  shapes: [
    along(wheelbase, 0, 'chain'),
    ...axleMarks([
      [0, front / 2],
      [0, -front / 2],
      [wheelbase, rear / 2],
      [wheelbase, -rear / 2],
    ]),
    { s: 'mark', at: centre, sign: 'centroid', label: '' },
    { s: 'vector', at: centre, by: gap, label: '' },
  ],
});
