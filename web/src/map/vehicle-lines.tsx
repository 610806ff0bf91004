import { formatNumber } from '../../../src/quantity/index.ts';
import type { MapWheels } from '../worker/map-model.ts';
import type { PlacedView } from './layout.ts';
import { TREAD } from './views.ts';

interface OnPaper {
  readonly placed: PlacedView;
}

/** Title, centre line, ground, and the outline of the whole. */
export function VehicleLines({ placed }: OnPaper) {
  const { view, k, x0, y0, field } = placed;
  const x = (u: number) => x0 + k * u;
  const y = (v: number) => y0 + k * v;
  const [left, right] = [x(view.frame.left) - 10, x(view.frame.left + view.frame.width) + 10];
  const [top, bottom] = [y(view.frame.top) - 10, y(view.frame.top + view.frame.height) + 10];
  return (
    <g>
      <polygon
        className="outline"
        points={view.outline.map(([u, v]) => `${x(u)},${y(v)}`).join(' ')}
      />
      {view.name === 'plan' ? (
        <line className="axis" x1={left} x2={right} y1={y0} y2={y0} />
      ) : (
        <line className="ground" x1={left} x2={right} y1={y0} y2={y0} />
      )}
      {(view.name === 'front' || view.name === 'rear') && (
        <line className="axis" x1={x0} x2={x0} y1={top} y2={bottom} />
      )}
      <ViewTitle placed={placed} left={field.left + 14} />
    </g>
  );
}

const TITLES = {
  plan: ['PLAN', 'X rearward, Y right of the vehicle: up', 'X right, Y up'],
  side: ['SIDE', 'X rearward, Z up', 'X right, Z up'],
  front: ['FRONT', 'Y right of the vehicle: to the left', 'Y to the left'],
  rear: ['REAR', 'Y right of the vehicle: to the right', 'Y to the right'],
} as const;

/** Mean advance of a letter of the title, CSS pixels. */
const LETTER = 6.4;

function ViewTitle({ placed, left }: OnPaper & { readonly left: number }) {
  const [title, long, short] = TITLES[placed.view.name];
  const room = placed.field.left + placed.field.width - left;
  const axes = LETTER * `${title} · ${long}`.length <= room ? long : short;
  return (
    <text className="view-title" x={left} y={placed.field.top + 12}>
      {title} · {axes}
    </text>
  );
}

/** Wheels with the dimension that places them, drawn over the parts. */
export function Wheels({ placed, wheels }: OnPaper & { readonly wheels: MapWheels }) {
  const { name } = placed.view;
  if (name === 'plan') return <PlanWheels placed={placed} wheels={wheels} />;
  if (name === 'side') return <SideWheels placed={placed} wheels={wheels} />;
  return (
    <EndWheels placed={placed} wheels={wheels} track={wheels.tracks[name === 'front' ? 0 : 1]} />
  );
}

type WheelProps = OnPaper & { readonly wheels: MapWheels };

const AXLES = ['front', 'rear'] as const;

/** Width of the tread is not recorded: it is drawn as a share of the radius. */
function PlanWheels({ placed: { k, x0, y0 }, wheels: { wheelbase, radius, tracks } }: WheelProps) {
  const [long, wide] = [2 * k * radius, k * TREAD * radius];
  return AXLES.flatMap((axle) => {
    const [x, track] = axle === 'front' ? [0, tracks[0]] : [wheelbase, tracks[1]];
    return [-1, 1].map((side) => (
      <rect
        key={`${axle} ${side}`}
        className="tyre"
        x={x0 + k * (x - radius)}
        y={y0 + (k * side * track) / 2 - wide / 2}
        width={long}
        height={wide}
      />
    ));
  });
}

function SideWheels({ placed: { k, x0, y0 }, wheels: { wheelbase, radius } }: WheelProps) {
  return (
    <g>
      {[0, wheelbase].map((at) => (
        <g key={at}>
          <circle className="tyre" cx={x0 + k * at} cy={y0 - k * radius} r={k * radius} />
          <circle className="hub" cx={x0 + k * at} cy={y0 - k * radius} r={(k * radius) / 3} />
        </g>
      ))}
      <Dimension from={x0} to={x0 + k * wheelbase} at={y0} metres={wheelbase} />
    </g>
  );
}

function EndWheels({ placed, wheels, track }: WheelProps & { readonly track: number }) {
  const { k, x0, y0 } = placed;
  const [wide, high] = [k * TREAD * wheels.radius, 2 * k * wheels.radius];
  return (
    <g>
      {[-1, 1].map((side) => (
        <rect
          key={side}
          className="tyre"
          x={x0 + (k * side * track) / 2 - wide / 2}
          y={y0 - high}
          width={wide}
          height={high}
        />
      ))}
      <Dimension from={x0 - (k * track) / 2} to={x0 + (k * track) / 2} at={y0} metres={track} />
    </g>
  );
}

interface DimensionProps {
  readonly from: number;
  readonly to: number;
  /** Height of what is measured; the line stands below. */
  readonly at: number;
  readonly metres: number;
}

/** A dimension line with its arrows (ISO 129), in millimetres. */
const Dimension = ({ from, to, at, metres }: DimensionProps) => (
  <g className="dimension">
    <path d={`M${from} ${at + 4}V${at + 20}M${to} ${at + 4}V${at + 20}M${from} ${at + 14}H${to}`} />
    <path className="arrow" d={`M${from} ${at + 14}l9 -2.5v5zM${to} ${at + 14}l-9 -2.5v5z`} />
    <text x={(from + to) / 2} y={at + 29} textAnchor="middle">
      {formatNumber(1000 * metres, 0)}
    </text>
  </g>
);
