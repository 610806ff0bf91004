import { type Id, isMissing, type NodeSpec, type StudyView } from '../../../src/study/index.ts';

export type Triple = readonly [x: number, y: number, z: number];

/** A thing with a place and a size, in metres in the vehicle frame: X rearward, Y right, Z up. */
export interface MapBody {
  readonly id: Id;
  readonly label: string;
  readonly name: string;
  readonly kind: 'part' | 'assembly';
  /** Assembly that a part belongs to. */
  readonly parent: Id | null;
  readonly at: Triple;
  readonly size: Triple;
  /** True where the size was read; else it is a cube of the mass of one piece. */
  readonly measured: boolean;
  /** kg; undefined where the mass is missing. */
  readonly mass?: number;
}

export interface MapWheels {
  readonly wheelbase: number;
  readonly radius: number;
  readonly tracks: readonly [front: number, rear: number];
}

/** What the drawings of a study are made of. */
export interface MapModel {
  readonly bodies: readonly MapBody[];
  readonly wheels?: MapWheels;
  /** Length, width and height of the whole vehicle, where read. */
  readonly envelope?: Triple;
  /** Parts that have no position and so are not on the drawing. */
  readonly unplaced: readonly { readonly id: Id; readonly label: string; readonly name: string }[];
}

/** A part without an envelope is drawn as a cube of one piece's mass at this density, kg/m³. */
export const DRAWN_DENSITY = 1000;

export function mapModel(view: StudyView): MapModel {
  const nodes = view.nodes('part');
  const parts = nodes.flatMap((n) => partBody(view, n));
  const placed = new Set(parts.map((p) => p.id));
  const assemblies = view.nodes('assembly').flatMap((n) => assemblyBody(view, n, parts));
  const wheels = wheelsOf(view);
  const root = view.root();
  const envelope = root && envelopeOf(view, root.id);
  return {
    bodies: [...assemblies, ...parts],
    ...(wheels ? { wheels } : {}),
    ...(envelope ? { envelope } : {}),
    unplaced: nodes
      .filter((n) => !placed.has(n.id))
      .map(({ id, label, name }) => ({ id, label, name })),
  };
}

/** A scalar or one component of a vector in force, SI; undefined when missing. */
function read(view: StudyView, id: Id, property: string, component = 0): number | undefined {
  const cell = view.cell(id, property);
  if (isMissing(cell)) return undefined;
  const { value } = cell;
  if (value.t === 'scalar') return value.x;
  if (value.t === 'count') return value.n;
  return value.t === 'vector' ? value.x[component] : undefined;
}

function triple([x, y, z]: readonly (number | undefined)[]): Triple | undefined {
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
}

const envelopeOf = (view: StudyView, id: Id): Triple | undefined =>
  triple(['length', 'width', 'height'].map((side) => read(view, id, `envelope.${side}`)));

function partBody(view: StudyView, { id, label, name, parent }: NodeSpec): MapBody[] {
  const at = triple([0, 1, 2].map((i) => read(view, id, 'position', i)));
  if (!at) return [];
  const mass = read(view, id, 'mass');
  const pieces = read(view, id, 'count') ?? 1;
  const side = Math.cbrt(Math.max(mass ?? 0, 0) / Math.max(pieces, 1) / DRAWN_DENSITY);
  const envelope = envelopeOf(view, id);
  const around = parent === null ? undefined : envelopeOf(view, parent);
  const within = (i: 0 | 1 | 2) => Math.min(side, around?.[i] ?? side);
  return [
    {
      ...{ id, label, name, parent, at, kind: 'part' },
      size: envelope ?? [within(0), within(1), within(2)],
      measured: envelope !== undefined,
      ...(mass === undefined ? {} : { mass }),
    },
  ];
}

/** An assembly with an envelope stands about the mass centre of its parts. */
function assemblyBody(view: StudyView, node: NodeSpec, parts: readonly MapBody[]): MapBody[] {
  const size = envelopeOf(view, node.id);
  if (!size) return [];
  const below = new Set(view.nodes('part', node.id).map((n) => n.id));
  const own = parts.filter((p) => below.has(p.id));
  const mass = own.reduce((sum, p) => sum + (p.mass ?? 0), 0);
  if (!(mass > 0)) return [];
  const centre = (i: 0 | 1 | 2) => own.reduce((sum, p) => sum + (p.mass ?? 0) * p.at[i], 0) / mass;
  const { id, label, name, parent } = node;
  return [
    {
      ...{ id, label, name, parent, size, mass, kind: 'assembly', measured: true },
      at: [centre(0), centre(1), centre(2)],
    },
  ];
}

function wheelsOf(view: StudyView): MapWheels | undefined {
  const root = view.root();
  if (!root) return undefined;
  const [wheelbase, radius, front, rear] = [
    'wheelbase',
    'tyreRadius',
    'track.front',
    'track.rear',
  ].map((property) => read(view, root.id, property));
  if (wheelbase === undefined || radius === undefined || front === undefined || rear === undefined)
    return undefined;
  return { wheelbase, radius, tracks: [front, rear] };
}
