import { isPlace, mediumClass } from '../../../data/index.ts';
import type { Id, LinkSpec, StudyView } from '../../../study/index.ts';
import { parseFastenerSpec } from '../../joining/fastener-spec.ts';
import { axisAndSign, axisOf, type Fastener, type Wall } from './place-fastener.ts';
import { type BarrierIn, type CrossingIn, SealingGraph, type ZoneIn } from './sealing-graph.ts';

interface Kept {
  readonly revision: string;
  readonly graph: SealingGraph;
}
const KEPT = new WeakMap<object, Kept>();

/** The graph of a study as it stands; zones, barriers and crossings go by their labels. */
export function sealingOf(view: StudyView): SealingGraph {
  const { line, revision } = view;
  const held = KEPT.get(line);
  if (held?.revision === revision) return held.graph;
  const graph = buildSealing(view);
  KEPT.set(line, { revision, graph });
  return graph;
}

export function buildSealing(view: StudyView): SealingGraph {
  const links = new LinkIndex(view);
  return new SealingGraph({
    zones: view.nodes('zone').flatMap(({ id, label }): ZoneIn[] => {
      const words = textOf(view, id, 'zone.medium');
      return isPlace(words) ? [] : [{ name: label, medium: mediumClass(words) }];
    }),
    barriers: view.nodes('barrier').map(({ id, label }): BarrierIn => {
      const wall = wallOf(view, id);
      const [a, b] = [links.one('separates', id, 'a'), links.one('separates', id, 'b')];
      return { name: label, a, b, ...(wall ? { wall } : {}) };
    }),
    crossings: view.nodes('crossing').map(({ id, label }): CrossingIn => {
      const fastener = fastenerOf(view, id, links);
      return {
        name: label,
        barriers: links.all('crosses', id),
        seal: textOf(view, id, 'crossing.seal'),
        count: numberOf(view, id, 'crossing.count') ?? 1,
        ...(fastener ? { fastener } : {}),
      };
    }),
  });
}

/** Labels at the far ends of links, looked up in one pass over each kind. */
class LinkIndex {
  readonly #ends = new Map<string, { readonly role: string | undefined; readonly id: Id }[]>();

  constructor(private readonly view: StudyView) {
    for (const kind of ['separates', 'crosses', 'made-by'] as const)
      for (const { from, to, role } of view.links(kind)) {
        if (to === null) continue;
        const key = `${kind} ${from}`;
        const held = this.#ends.get(key);
        if (held) held.push({ role, id: to });
        else this.#ends.set(key, [{ role, id: to }]);
      }
  }

  ids = (kind: LinkSpec['kind'], from: Id, role?: string): Id[] =>
    (this.#ends.get(`${kind} ${from}`) ?? [])
      .filter((end) => role === undefined || end.role === role)
      .filter(({ id }) => this.view.find(id)?.id === id)
      .map(({ id }) => id);
  all = (kind: LinkSpec['kind'], from: Id): string[] =>
    this.ids(kind, from).map((id) => this.view.node(id)?.label ?? id);
  one(kind: LinkSpec['kind'], from: Id, role: string): string | undefined {
    const [id] = this.ids(kind, from, role);
    return id === undefined ? undefined : this.view.node(id)?.label;
  }
}

/** The joint or part that a barrier, crossing or line is made by. */
export const makersOf = (view: StudyView, id: Id): readonly Id[] =>
  view
    .links('made-by', id)
    .flatMap(({ from, to }) =>
      from === id && to !== null && view.find(to)?.id === to ? [to] : [],
    );

export function textOf(view: StudyView, id: Id, property: string): string {
  const cell = view.cell(id, property);
  if ('missing' in cell) return '';
  const { value } = cell;
  return value.t === 'text' ? value.text : value.t === 'term' ? value.code : '';
}

export function numberOf(view: StudyView, id: Id, property: string): number | undefined {
  const cell = view.cell(id, property);
  if ('missing' in cell) return undefined;
  const { value } = cell;
  return value.t === 'scalar' ? value.x : value.t === 'count' ? value.n : undefined;
}

function wallOf(view: StudyView, id: Id): Wall | undefined {
  const axis = axisOf(textOf(view, id, 'wall.axis'));
  if (axis === undefined) return undefined;
  const box = (['x', 'y', 'z'] as const).map(
    (a) => [numberOf(view, id, `box.${a}0`), numberOf(view, id, `box.${a}1`)] as const,
  );
  return { axis, box };
}

function fastenerOf(view: StudyView, id: Id, links: LinkIndex): Fastener | undefined {
  const direction = axisAndSign(textOf(view, id, 'crossing.direction'));
  const place = view.cell(id, 'place');
  if (!direction || 'missing' in place || place.value.t !== 'vector') return undefined;
  const [x = Number.NaN, y = Number.NaN, z = Number.NaN] = place.value.x;
  const reach = numberOf(view, id, 'crossing.reach') ?? lengthOf(view, links.ids('made-by', id));
  return reach === undefined ? undefined : { ...direction, seat: [x, y, z], reach };
}

/** The length that the specification of the joint names, m. */
function lengthOf(view: StudyView, makers: readonly Id[]): number | undefined {
  for (const id of makers) {
    const length = parseFastenerSpec(textOf(view, id, 'spec'))?.length;
    if (length !== undefined) return length;
  }
  return undefined;
}
