import type { Triple } from '../worker/map-model.ts';
import type { PlacedView } from './layout.ts';
import { PROJECTIONS } from './views.ts';

/** An arrow over the drawing, metres in the vehicle frame as drawn: its true size stands in the words. */
export interface MapArrow {
  readonly words: string;
  readonly from: Triple;
  readonly by: Triple;
}

/** Shorter than this on the paper, an arrow points at nobody: CSS pixels. */
const LEAST = 3;
const HEAD = 9;

/** Arrows of a view: those that point along it are not seen in it. */
export function ArrowsShown({
  placed,
  arrows,
}: {
  readonly placed: PlacedView;
  readonly arrows: readonly MapArrow[];
}) {
  const { view, k, x0, y0 } = placed;
  const { at } = PROJECTIONS[view.name];
  return arrows.map(({ words, from, by }) => {
    const [u, v] = at(from);
    const [du, dv] = at(by);
    const [x, y] = [x0 + k * u, y0 + k * v];
    const length = k * Math.hypot(du, dv);
    if (length < LEAST) return null;
    const turn = (180 / Math.PI) * Math.atan2(dv, du);
    return (
      <g key={words} className="arrow" transform={`translate(${x} ${y}) rotate(${turn})`}>
        <title>{words}</title>
        <path className="shaft" d={`M0 0H${Math.max(length - HEAD, 0)}`} />
        <path className="head" d={`M${length} 0l${-HEAD} -4.5v9z`} />
      </g>
    );
  });
}
