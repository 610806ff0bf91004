import { type KeyboardEvent, type PointerEvent, useId, useMemo, useRef } from 'react';
import { useSelection } from '../app/selection.tsx';
import { useWhy } from '../parts/why.tsx';
import type { MapBody, MapModel } from '../worker/map-model.ts';
import { ArrowsShown, type MapArrow } from './arrows.tsx';
import { CgMarks } from './cg-marks.tsx';
import { InHandOverlay } from './in-hand-overlay.tsx';
import { layOut } from './layout.ts';
import type { Mark } from './marks.ts';
import { PartBoxes } from './part-boxes.tsx';
import { pick } from './pick.ts';
import { useSize } from './use-size.ts';
import { VehicleLines, Wheels } from './vehicle-lines.tsx';
import { canBeDrawn, type ViewName, viewOf } from './views.ts';

export interface MapSheetProps {
  readonly model: MapModel;
  readonly marks: readonly Mark[];
  readonly rows: readonly (readonly ViewName[])[];
  /** Ids of bodies that carry a label. */
  readonly labelled: ReadonlySet<string>;
  readonly arrows?: readonly MapArrow[];
  /** Fit the width only, and grow downwards. */
  readonly tall?: boolean;
}

/** The vehicle drawn from its record, or what is wanted before it can be. */
export const MapSheet = (props: MapSheetProps) =>
  canBeDrawn(props.model) ? <DrawnSheet {...props} /> : <NothingDrawn />;

/**
 * The drawing. A touch takes a part in hand; with the keyboard the arrow
 * keys go from part to part and Enter opens where its mass comes from.
 */
function DrawnSheet(props: MapSheetProps) {
  const { model, marks, rows, labelled, arrows = NONE, tall = false } = props;
  const box = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(box);
  const { selected, select } = useSelection();
  const open = useWhy();
  const hatch = useId();
  const hasLabels = labelled.size > 0 || selected !== undefined;
  const views = useMemo(() => rows.map((row) => row.map((v) => viewOf(v, model))), [rows, model]);
  const layout = useMemo(
    () => layOut(views, width, tall ? undefined : height, hasLabels),
    [views, width, height, tall, hasLabels],
  );
  const onPointer = (event: PointerEvent<HTMLDivElement>) => {
    const at = event.currentTarget.querySelector('svg')?.getBoundingClientRect();
    const found = at && pick(layout, event.clientX - at.left, event.clientY - at.top, selected);
    if (found) select(found);
  };
  const onKey = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (step !== undefined) select(stepFrom(model.bodies, selected, step));
    else if (event.key === 'Enter' && selected)
      open({ of: 'cell', subject: selected, property: 'mass' });
    else return;
    event.preventDefault();
  };
  return (
    <div
      ref={box}
      className={`map ${tall ? 'tall' : ''}`}
      role="listbox"
      tabIndex={0}
      aria-label="Drawn map of the parts: arrow keys go from part to part, Enter tells where the mass comes from"
      aria-activedescendant={`${hatch}-option`}
      onPointerUp={onPointer}
      onKeyDown={onKey}
    >
      <InHandOption id={`${hatch}-option`} bodies={model.bodies} selected={selected} />
      {width > 0 && (
        <svg width={layout.width} height={layout.height} aria-hidden="true">
          <defs>
            <pattern
              id="hatch"
              width="6"
              height="6"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <line x1="0" y1="0" x2="0" y2="6" />
            </pattern>
          </defs>
          {layout.views.map((placed) => (
            <g key={placed.view.name}>
              <VehicleLines placed={placed} />
              <PartBoxes placed={placed} />
              {model.wheels && <Wheels placed={placed} wheels={model.wheels} />}
              <CgMarks placed={placed} marks={marks} />
              <ArrowsShown placed={placed} arrows={arrows} />
              <InHandOverlay placed={placed} labelled={labelled} selected={selected} />
            </g>
          ))}
        </svg>
      )}
    </div>
  );
}

const NONE: readonly MapArrow[] = [];

const NothingDrawn = () => (
  <p className="soft">
    Nothing can be drawn yet: no part has a place, and wheelbase, tracks and loaded tyre radius are
    not all read.
  </p>
);

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};

const byLabel = (bodies: readonly MapBody[]): MapBody[] =>
  [...bodies].sort((a, b) => (a.label < b.label ? -1 : 1));

function stepFrom(
  bodies: readonly MapBody[],
  selected: string | undefined,
  step: number,
): string | undefined {
  const order = byLabel(bodies);
  const at = order.findIndex((b) => b.id === selected);
  const next = at < 0 ? (step > 0 ? 0 : order.length - 1) : at + step;
  return order[Math.min(Math.max(next, 0), order.length - 1)]?.id;
}

interface InHandOptionProps {
  readonly id: string;
  readonly bodies: readonly MapBody[];
  readonly selected: string | undefined;
}

/** The part in hand, said to those who hear the page; the drawing itself is for the eye. */
function InHandOption({ id, bodies, selected }: InHandOptionProps) {
  const order = useMemo(() => byLabel(bodies), [bodies]);
  const at = order.findIndex((b) => b.id === selected);
  const body = order[at];
  return (
    <div
      id={id}
      role="option"
      className="heard"
      aria-selected={body !== undefined}
      aria-setsize={order.length}
      aria-posinset={at + 1 || 1}
      tabIndex={-1}
    >
      {body ? `${body.label} ${body.name}` : 'no part in hand'}
    </div>
  );
}
