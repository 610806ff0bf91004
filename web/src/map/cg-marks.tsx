import type { PlacedView } from './layout.ts';
import type { Mark } from './marks.ts';
import { PROJECTIONS } from './views.ts';

const R = 7;
const ARM = 12;

/** Centres of gravity of a view, with whiskers of two standard uncertainties where they show. */
export function CgMarks({ placed, marks }: { placed: PlacedView; marks: readonly Mark[] }) {
  const { view, k, x0, y0 } = placed;
  const { at, along } = PROJECTIONS[view.name];
  return marks
    .filter((m) => m.known[along[0]] && m.known[along[1]])
    .map((mark) => {
      const [u, v] = at(mark.at);
      const [x, y] = [x0 + k * u, y0 + k * v];
      const reach = along.map((i) => Math.max(ARM, 2 * k * mark.u[i]));
      const [across = ARM, up = ARM] = reach;
      return (
        <g key={mark.words} className={`cg ${mark.incomplete ? 'open' : ''}`}>
          <title>{mark.words}</title>
          {mark.sign === 'circle' ? (
            <circle cx={x} cy={y} r={R} />
          ) : (
            <rect x={x - R} y={y - R} width={2 * R} height={2 * R} />
          )}
          <path d={`M${x - across} ${y}H${x + across}M${x} ${y - up}V${y + up}`} />
        </g>
      );
    });
}

/** What the signs stand for. */
export const MarkKey = ({ marks }: { readonly marks: readonly Mark[] }) => (
  <ul className="mark-key" aria-label="Signs on the drawing">
    {marks.map((mark) => (
      <li key={mark.words} className={mark.incomplete ? 'open' : ''}>
        <svg width="26" height="26" viewBox="-13 -13 26 26" aria-hidden="true">
          <g className="cg">
            {mark.sign === 'circle' ? (
              <circle r={R} />
            ) : (
              <rect x={-R} y={-R} width={2 * R} height={2 * R} />
            )}
            <path d={`M${-ARM} 0H${ARM}M0 ${-ARM}V${ARM}`} />
          </g>
        </svg>
        centre of gravity {mark.words}
        {mark.incomplete && ', incomplete'}
      </li>
    ))}
  </ul>
);
