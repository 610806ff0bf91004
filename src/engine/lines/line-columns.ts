import { isPlace } from '../../data/index.ts';
import type { Id, LinkSpec, StudyView } from '../../study/index.ts';
import type { Finder, Found, ScalarColumn, ScalarInput } from '../method.ts';
import { numberOf, textOf } from '../sealing/graph/from-study.ts';
import { type Box, routeLength, routeOf, routeToBox } from './route.ts';

/** Labels of what a line is linked to, in the order of their places. */
export function linkedTo(
  view: StudyView,
  line: Id,
  kind: LinkSpec['kind'],
  role?: string,
): readonly string[] {
  return view
    .links(kind, line)
    .filter((l) => l.from === line && l.to !== null && (role === undefined || l.role === role))
    .sort((a, b) => Number(a.role) - Number(b.role))
    .flatMap(({ to }) => view.find(to ?? '')?.label ?? []);
}

/** The length of a line: as recorded, else along the points of its route. */
export function lineLength(at: Finder, line: Id): Found {
  if (at.view.properties(line).includes('line.length')) return at.number(line, 'line.length');
  const route = routeOf(at.text(line, 'line.route').text);
  const label = at.view.node(line)?.label ?? line;
  if (!route || route.length < 2)
    return at.missing(label, 'its length is not recorded and its route has no points');
  const x = routeLength(route);
  return at.tabled({
    id: `route/${line}`,
    words: `length of ${label} along its points`,
    x,
    spread: { s: 'normal', u: ROUTE_SPREAD * x },
    how: 'inferred',
    source: 'judgement: bends cut corners, slack adds',
  });
}
/** Relative standard uncertainty of a length along points. */
const ROUTE_SPREAD = 0.05;

const boxOf = (view: StudyView, id: Id): Box =>
  (['x', 'y', 'z'] as const).map(
    (axis) => [numberOf(view, id, `box.${axis}0`), numberOf(view, id, `box.${axis}1`)] as const,
  );
const isKnown = (box: Box): boolean => box.flat().some((x) => x !== undefined);

/** The nearest of several boxes to a line's route, in words; empty without a route. */
function nearest(view: StudyView, line: Id, ids: readonly Id[]): string {
  const route = routeOf(textOf(view, line, 'line.route'));
  if (!route) return '';
  const found = ids
    .map((id) => ({ id, box: boxOf(view, id) }))
    .filter(({ box }) => isKnown(box))
    .map(({ id, box }) => ({ id, far: routeToBox(route, box) }))
    .sort((a, b) => a.far - b.far)[0];
  if (!found) return '';
  const name = view.node(found.id)?.label ?? found.id;
  return found.far === 0 ? `within ${name}` : `${Math.round(1000 * found.far)} mm to ${name}`;
}

export const nearestCrushZone = (at: Finder, line: Id): string =>
  nearest(
    at.view,
    line,
    at.view
      .nodes('zone')
      .map((n) => n.id)
      .filter((id) => isCrush(textOf(at.view, id, 'zone.medium'))),
  );
export const nearestFace = (at: Finder, line: Id): string =>
  nearest(
    at.view,
    line,
    at.view.nodes('barrier').map((n) => n.id),
  );
const isCrush = (words: string): boolean => isPlace(words) && /crush zone/i.test(words);

/** A number of a line; rows may lack it. */
export const lineColumn = (
  input: Pick<ScalarColumn, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range'>,
  property: string,
): ScalarColumn => ({
  in: 'scalar',
  ...input,
  bounds: { atLeast: 0 },
  optional: true,
  where: `${input.meaning}, of the line`,
  find: (at, row) => at.number(row, property),
});

/** A number of the line that is asked about. */
export const ofLine = (
  input: Pick<ScalarInput, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range'>,
  property: string,
): ScalarInput => ({
  in: 'scalar',
  ...input,
  bounds: { above: 0 },
  where: `${input.meaning}, of the line`,
  find: (at) => at.number(at.subject, property),
});
export const LENGTH: ScalarInput = {
  ...ofLine(
    {
      ...{ name: 'length', symbol: 'L', kind: 'length', unit: 'm', meaning: 'length' },
      range: [0.02, 60],
    },
    'line.length',
  ),
  where: 'length of the line, else along the points of its route',
  find: (at) => lineLength(at, at.subject),
};
