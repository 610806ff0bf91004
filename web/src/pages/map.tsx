import { useState } from 'react';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { MarkKey } from '../map/cg-marks.tsx';
import { type LabelChoice, LabelPicker, labelledBodies } from '../map/label-choice.tsx';
import { MapSheet } from '../map/map-sheet.tsx';
import { useMarks } from '../map/use-marks.ts';
import { VIEWS, type ViewName } from '../map/views.ts';
import { counted } from '../parts/counted.ts';
import { InHand } from '../parts/in-hand.tsx';
import { DRAWN_DENSITY, type MapModel } from '../worker/map-model.ts';

const ALL = [
  ['plan', 'front'],
  ['side', 'rear'],
] as const;
const CHOICES = ['all four', ...VIEWS] as const;
type Choice = (typeof CHOICES)[number];

const rowsOf = (choice: Choice): readonly (readonly ViewName[])[] =>
  choice === 'all four' ? ALL : [[choice]];
const ROWS = Object.fromEntries(CHOICES.map((c) => [c, rowsOf(c)])) as Record<
  Choice,
  ReturnType<typeof rowsOf>
>;

/** The vehicle drawn from its record in four views. */
export function MapPage() {
  const { data: model } = useDesk(['map'], (desk) => desk.map());
  const marks = useMarks();
  const { selected } = useSelection();
  const [labels, setLabels] = useState<LabelChoice>('heaviest');
  const [view, setView] = useState<Choice>('all four');
  if (!model) return null;
  return (
    <div className="map-page">
      <h1 className="heard">Map</h1>
      <div className="map-foot">
        <label className="inline">
          View
          <select value={view} onChange={(e) => setView(e.target.value as Choice)}>
            {CHOICES.map((choice) => (
              <option key={choice}>{choice}</option>
            ))}
          </select>
        </label>
        <LabelPicker value={labels} onChange={setLabels} />
        <MarkKey marks={marks} />
        <MapCaption model={model} />
      </div>
      <div className={selected ? 'map-split with-part' : 'map-split'}>
        <MapSheet
          model={model}
          marks={marks}
          rows={ROWS[view]}
          labelled={labelledBodies(model, labels, selected)}
        />
        <aside>
          <InHand />
        </aside>
      </div>
    </div>
  );
}

/** What the drawing is made of, and what is not on it. */
function MapCaption({ model }: { readonly model: MapModel }) {
  const { select } = useSelection();
  const parts = model.bodies.filter((b) => b.kind === 'part');
  const bySize = parts.filter((p) => p.measured).length;
  return (
    <details>
      <summary>
        {counted(parts.length, 'part')} by position
        {model.unplaced.length > 0 && (
          <span className="open">, {model.unplaced.length} without a place</span>
        )}
      </summary>
      <p>
        {bySize} drawn by their envelope, {parts.length - bySize} as a cube of one piece’s mass at{' '}
        {DRAWN_DENSITY} kg/m³, no larger than the assembly around it: that is no outline. Bold:
        assemblies by their envelope, about the mass centre of their parts. The line of long and two
        short strokes is the envelope of the whole vehicle about the middle of its axles, since
        overhangs are not recorded; without a reading of it, a line round all placed parts. Tread
        width is not recorded.
      </p>
      {model.unplaced.length > 0 && (
        <ul>
          {model.unplaced.map(({ id, label, name }) => (
            <li key={id}>
              <button type="button" className="link" onClick={() => select(id)}>
                {label} {name}
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
