import { placeLabels, thatFit } from './labels.ts';
import type { PlacedView } from './layout.ts';
import type { Box } from './views.ts';

/** Advance of a digit of the label font at its size, CSS pixels: labels are numbers of parts. */
const CHAR = 7.6;

/** The part in hand comes first, then the heaviest. */
const first = ({ body }: Box, selected: string | undefined): number =>
  body.id === selected ? Number.POSITIVE_INFINITY : (body.mass ?? 0);

export interface OverlayProps {
  readonly placed: PlacedView;
  /** Ids of bodies that carry a label. */
  readonly labelled: ReadonlySet<string>;
  readonly selected: string | undefined;
}

/** Labels with their leader lines, and the part in hand, over the drawn boxes. */
export function InHandOverlay({ placed, labelled, selected }: OverlayProps) {
  const { view, k, x0, y0, field } = placed;
  const boxes = view.boxes
    .filter((b) => labelled.has(b.body.id) || b.body.id === selected)
    .sort((a, b) => first(b, selected) - first(a, selected));
  const middle = (b: Box) => ({ x: x0 + k * (b.u + b.w / 2), y: y0 + k * (b.v + b.h / 2) });
  const base = field.top + 34;
  const wanted = boxes.map((b) => ({
    id: b.body.id,
    text: b.body.label,
    at: middle(b).x,
    down: middle(b).y - base,
    width: CHAR * b.body.label.length,
  }));
  const [left, right] = [field.left + 4, field.left + field.width - 4];
  const labels = placeLabels(thatFit(wanted, left, right), left, right);
  const inHand = boxes.find((b) => b.body.id === selected);
  return (
    <g className="overlay">
      {labels.map((label) => {
        const box = boxes.find((b) => b.body.id === label.id);
        if (!box) return null;
        const { x, y } = middle(box);
        return (
          <g key={label.id} className={label.id === selected ? 'leader in-hand' : 'leader'}>
            <path d={`M${label.x} ${base + 4}L${x} ${y}`} />
            <circle cx={x} cy={y} r="1.6" />
            <text x={label.x} y={base} textAnchor="middle">
              {label.text}
            </text>
          </g>
        );
      })}
      {inHand && (
        <rect
          className="in-hand-box"
          x={x0 + k * inHand.u - 3}
          y={y0 + k * inHand.v - 3}
          width={k * inHand.w + 6}
          height={k * inHand.h + 6}
        />
      )}
    </g>
  );
}
