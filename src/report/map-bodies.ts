import { type Id, isMissing, type NodeSpec, type StudyView } from '../study/index.ts';

/** A thing with a place and a size, mm in the vehicle frame. */
export interface Body {
  readonly label: string;
  readonly words: string;
  readonly at: Triple;
  readonly size: Triple;
  readonly mass: number;
  readonly kind: 'part' | 'assembly';
}
export type Triple = readonly [x: number, y: number, z: number];

/** A part without an envelope is drawn as a cube of one piece's mass at this density, kg/m³. */
export const DRAWN_DENSITY = 2700;

/** A scalar or one component of a vector in force, SI; undefined when missing. */
function reading(view: StudyView, id: Id, property: string, component = 0): number | undefined {
  const cell = view.cell(id, property);
  if (isMissing(cell)) return undefined;
  const { value } = cell;
  if (value.t === 'scalar') return value.x;
  if (value.t === 'count') return value.n;
  return value.t === 'vector' ? value.x[component] : undefined;
}

const triple = (xs: readonly (number | undefined)[]): Triple | undefined => {
  const [x, y, z] = xs;
  return x === undefined || y === undefined || z === undefined
    ? undefined
    : [1000 * x, 1000 * y, 1000 * z];
};

const envelopeOf = (view: StudyView, id: Id): Triple | undefined =>
  triple(['length', 'width', 'height'].map((side) => reading(view, id, `envelope.${side}`)));

export function partBody(view: StudyView, node: NodeSpec): Body[] {
  const at = triple([0, 1, 2].map((i) => reading(view, node.id, 'position', i)));
  if (!at) return [];
  const mass = Math.max(reading(view, node.id, 'mass') ?? 0, 0);
  const pieces = Math.max(reading(view, node.id, 'count') ?? 1, 1);
  const side = 1000 * Math.cbrt(mass / pieces / DRAWN_DENSITY);
  const size = envelopeOf(view, node.id) ?? ([side, side, side] as const);
  return [{ label: node.label, words: node.name, at, size, mass, kind: 'part' }];
}

/** An assembly with an envelope stands about the mass centre of its parts. */
export function assemblyBody(view: StudyView, node: NodeSpec, parts: readonly Body[]): Body[] {
  const size = envelopeOf(view, node.id);
  if (!size) return [];
  const labels = new Set(view.nodes('part', node.id).map((n) => n.label));
  const own = parts.filter((p) => labels.has(p.label));
  const mass = own.reduce((sum, p) => sum + p.mass, 0);
  if (!(mass > 0)) return [];
  const centre = (i: 0 | 1 | 2): number => own.reduce((sum, p) => sum + p.mass * p.at[i], 0) / mass;
  const at = [centre(0), centre(1), centre(2)] as const;
  return [{ label: node.label, words: node.name, at, size, mass, kind: 'assembly' }];
}

/** Sizes in mm. */
export interface Wheels {
  readonly wheelbase: number;
  readonly radius: number;
  /** Front and rear. */
  readonly tracks: readonly [number, number];
}

export function wheelsOf(view: StudyView): Wheels | undefined {
  const root = view.root();
  if (!root) return undefined;
  const of = (property: string): number | undefined => {
    const x = reading(view, root.id, property);
    return x === undefined ? undefined : 1000 * x;
  };
  const [wheelbase, radius, front, rear] = [
    of('wheelbase'),
    of('tyreRadius'),
    of('track.front'),
    of('track.rear'),
  ];
  if (wheelbase === undefined || radius === undefined || front === undefined || rear === undefined)
    return undefined;
  return { wheelbase, radius, tracks: [front, rear] };
}
