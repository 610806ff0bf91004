import { memo } from 'react';
import { HEAVIEST, heaviest } from './heaviest.ts';
import type { PlacedView } from './layout.ts';
import type { Box } from './views.ts';

/**
 * Boxes of all bodies of a view, large ones behind; of many parts the light ones faint, and the
 * few heaviest bold before them. Drawn once; what is in hand is drawn over it.
 */
export const PartBoxes = memo(function PartBoxes({ placed }: { readonly placed: PlacedView }) {
  const { view, k, x0, y0 } = placed;
  const parts = view.boxes.map((b) => b.body).filter((b) => b.kind === 'part');
  const heavy = new Set(parts.length > HEAVIEST ? heaviest(parts, HEAVIEST) : []);
  const rank = ({ body }: Box) => (heavy.size === 0 ? '' : heavy.has(body) ? 'heavy' : 'faint');
  const boxes = [...view.boxes].sort(
    (a, b) => Number(heavy.has(a.body)) - Number(heavy.has(b.body)) || b.w * b.h - a.w * a.h,
  );
  return (
    <g>
      {boxes.map((box) => (
        <rect
          key={box.body.id}
          className={classOf(box, view.name === 'plan', rank(box))}
          x={x0 + k * box.u}
          y={y0 + k * box.v}
          width={Math.max(k * box.w, 1)}
          height={Math.max(k * box.h, 1)}
        />
      ))}
    </g>
  );
});

/** Assemblies with an envelope are drawn bold, and hatched where the view looks through them. */
const classOf = ({ body }: Box, isPlan: boolean, rank: string): string =>
  body.kind === 'assembly'
    ? `assembly ${isPlan ? '' : 'hatched'}`
    : ['part', body.measured ? 'measured' : '', rank].join(' ');
