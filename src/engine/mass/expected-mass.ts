import { materialOf } from '../../data/index.ts';
import type { Id } from '../../study/index.ts';
import type { Finder, Found, TabledValue } from '../method.ts';
import { SIDES_ALIKE } from './faults/fault-rates.ts';
import { mirrorsOf } from './faults/mirror-pairs.ts';
import { modulesIn, partsInModule } from './module-inputs.ts';
import { productCell } from './product.ts';

/** Density of a part: its own reading, else that of its material. */
export function densityOf(at: Finder, part: Id): Found {
  const own = at.number(part, 'density');
  if (!('missing' in own)) return own;
  const words = at.text(part, 'material').text;
  const material = materialOf(words);
  if (!material)
    return at.missing('density', words === '' ? 'no material' : `no density for "${words}"`);
  const { x, spread, how, source } = material.density;
  return at.tabled({
    id: `material/${material.id}/density`,
    words: `density of ${material.words}`,
    ...{ x, spread, how, source },
  });
}

/** Volume of the material of a part; of a fluid, the volume that the book fills in. */
export function volumeOf(at: Finder, part: Id): Found {
  const own = at.number(part, 'volume');
  if (!('missing' in own)) return own;
  const filled = at.number(part, 'fillVolume');
  return 'missing' in filled ? own : filled;
}

/** Pieces of a part; one where nobody counted. */
export function piecesOf(at: Finder, part: Id): Found {
  const counted = at.number(part, 'count');
  return 'missing' in counted ? at.exact(1, 'pieces, one') : counted;
}

/** Area of a formed sheet over that of its envelope's largest face. */
export const SHEET_SHAPE: TabledValue = {
  id: 'mass/sheet-shape',
  words: 'developed area of a formed sheet over the largest face of its envelope',
  x: 1,
  spread: { s: 'rectangular', half: 0.5 },
  how: 'guessed',
  source: 'common practice, no source',
};

/** How alike the two sides of one design are: a factor on the mass of the other side. */
export const OTHER_SIDE: TabledValue = {
  id: 'mass/other-side',
  words: 'mass of one side over that of its mirror image',
  x: 1,
  spread: { s: 'normal', u: SIDES_ALIKE },
  how: 'guessed',
  source: 'scatter of single units of one design, twice',
};

/** Largest face of a part's envelope: the product of its two longer sides. */
export function largestFace(at: Finder, part: Id): Found {
  const sides = ['length', 'width', 'height'].map((s) => at.number(part, `envelope.${s}`));
  const gone = sides.find((s) => 'missing' in s);
  if (gone) return gone;
  const x = (s: Found) => ('missing' in s ? 0 : s.form.x);
  const [first, second] = [...sides].sort((a, b) => x(b) - x(a));
  return productCell('largest face of the envelope', [first as Found, second as Found]);
}

/** The part across the centre plane, by name and position; undefined where there is none. */
export function otherSideOf({ view }: Finder, part: Id): Id | undefined {
  const node = view.node(part);
  const siblings = node?.parent ? view.children(node.parent).filter((n) => n.kind === 'part') : [];
  const rows = siblings.map((n) => ({
    ...{ number: n.label, label: n.label, name: n.name, group: '', mass: undefined, at: undefined },
    ...{ pieces: Number.NaN, instrument: '', written: '' },
  }));
  const own = siblings.findIndex((n) => n.id === part);
  return siblings[mirrorsOf(rows)[own] ?? -1]?.id;
}

/** Mass of the first module that a part was weighed in, and of all others that were in it. */
export function moduleAround(at: Finder, part: Id): { module: Found; others: Found } {
  const root = at.view.root()?.id ?? at.subject;
  const modules = modulesIn(at.view, root);
  const module = modules.find((m) => partsInModule(at.view, m).includes(part));
  if (module === undefined) {
    const none = at.missing('module', 'no module that was weighed in one piece lists it');
    return { module: none, others: none };
  }
  const others = partsInModule(at.view, module).filter((id) => id !== part);
  return {
    module: at.number(module, 'moduleMass'),
    others: at.sum(
      'all others in the module',
      others.map((id) => at.number(id, 'mass')),
    ),
  };
}

/** Mass to be expected of a part by what it is made of, for a search that has no scale to trust. */
export function expectedByMaterial(at: Finder, part: Id): Found {
  const density = densityOf(at, part);
  const pieces = piecesOf(at, part);
  const bySolid = productCell('volume times density', [pieces, at.number(part, 'volume'), density]);
  if (!('missing' in bySolid)) return bySolid;
  const byFill = productCell('volume filled times density', [
    at.number(part, 'fillVolume'),
    density,
  ]);
  if (!('missing' in byFill)) return byFill;
  return productCell('sheet of its envelope', [
    pieces,
    largestFace(at, part),
    at.number(part, 'thickness'),
    density,
    at.tabled(SHEET_SHAPE),
  ]);
}
