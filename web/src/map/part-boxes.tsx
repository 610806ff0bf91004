import { memo } from 'react';
import type { PlacedView } from './layout.ts';
import type { Box } from './views.ts';

/** Boxes of all bodies of a view, large ones behind. Drawn once; what is in hand is drawn over it. */
export const PartBoxes = memo(function PartBoxes({ placed }: { readonly placed: PlacedView }) {
  const { view, k, x0, y0 } = placed;
  const boxes = [...view.boxes].sort((a, b) => b.w * b.h - a.w * a.h);
  return (
    <g>
      {boxes.map((box) => (
        <rect
          key={box.body.id}
          className={classOf(box, view.name === 'plan')}
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
const classOf = ({ body }: Box, isPlan: boolean): string =>
  body.kind === 'assembly'
    ? `assembly ${isPlan ? '' : 'hatched'}`
    : body.measured
      ? 'part measured'
      : 'part';
