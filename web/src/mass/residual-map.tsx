import { useMemo } from 'react';
import type { DetailTable } from '../../../src/engine/index.ts';
import { PageSection } from '../answer-page/answer-page.tsx';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import type { MapArrow } from '../map/arrows.tsx';
import { MarkKey } from '../map/cg-marks.tsx';
import { MapSheet } from '../map/map-sheet.tsx';
import type { Mark } from '../map/marks.ts';
import { useMarks } from '../map/use-marks.ts';
import { canBeDrawn } from '../map/views.ts';
import { numberLine } from '../parts/number-text.ts';
import { useAnswers } from '../parts/use-out.ts';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
import type { MapModel, Triple } from '../worker/map-model.ts';

const ROWS = [['plan'], ['side']] as const;
/** Suspects that carry a label on the map. */
const LABELLED = 10;
/** Longest arrow as drawn, metres. */
const LONGEST = 0.7;

/** Residuals as arrows on the drawn vehicle, and the rows that are likely wrong by their labels. */
export function ResidualMap() {
  const { data: model } = useDesk(['map'], (desk) => desk.map());
  const balance = useAnswers('mass-balance').data?.[0];
  const faults = useAnswers('mass-faults').data?.[0];
  const marks = useMarks();
  const { selected } = useSelection();
  const arrows = useMemo(() => arrowsOf(balance, marks), [balance, marks]);
  const labelled = useMemo(() => suspectIds(faults, model), [faults, model]);
  if (!model || !canBeDrawn(model)) return null;
  return (
    <PageSection title="Where it does not close" wide>
      <div className="residual-map">
        <MapSheet
          model={model}
          marks={marks}
          rows={ROWS}
          labelled={labelled}
          arrows={arrows}
          tall
        />
        <div>
          <MarkKey marks={marks} />
          <h3>Arrows</h3>
          {arrows.length === 0 && <p className="soft">No gap can be worked out yet.</p>}
          <ul className="arrow-key">
            {arrows.map((arrow) => (
              <li key={arrow.words}>{arrow.words}</li>
            ))}
          </ul>
          <p className="soft">
            Arrows of masses point up where the parts weigh more than the scale. Lengths are to no
            scale of the drawing: the longest of each kind is drawn {LONGEST} m long.
          </p>
          {labelled.size > 0 && (
            <p>
              <b className="open">Labels</b> are the first {labelled.size} suspects below.
            </p>
          )}
          {selected !== undefined && <p className="soft">Heavier outline: the part in hand.</p>}
        </div>
      </div>
    </PageSection>
  );
}

/** Gaps in force up or down at their places, and the shift of the centre of gravity. */
function arrowsOf(sheet: AnswerSheet | undefined, marks: readonly Mark[]): MapArrow[] {
  const scales = marks.find((m) => m.sign === 'circle');
  if (!sheet || !scales) return [];
  const out = (name: string) => sheet.outs.find((o) => o.name === name);
  const force = out('force');
  const masses = [
    ...(force ? [{ words: `whole vehicle ${numberLine(force)}`, at: scales.at, kg: force.x }] : []),
    ...(sheet.detail ? moduleGaps(sheet.detail) : []),
  ];
  const most = Math.max(...masses.map((m) => Math.abs(m.kg)), Number.MIN_VALUE);
  return [
    ...masses.map(({ words, at, kg }) => ({
      ...{ words, from: at },
      by: [0, 0, (LONGEST * kg) / most] as const,
    })),
    ...shiftArrow(out('shiftX'), out('shiftY'), out('shiftZ'), scales.at),
  ];
}

type Out = AnswerSheet['outs'][number] | undefined;

/** From the centre of gravity by the scales towards that of the parts, many times its length. */
function shiftArrow(x: Out, y: Out, z: Out, from: Triple): MapArrow[] {
  if (!x || !y) return [];
  const by = [x.x, y.x, z?.x ?? 0] as const;
  const size = Math.hypot(...by);
  if (size === 0) return [];
  const k = LONGEST / size;
  const words = [x, y, ...(z ? [z] : [])].map((o, i) => `${'XYZ'[i]} ${numberLine(o)}`).join(', ');
  return [
    {
      words: `centre of gravity of the parts less that by the scales: ${words}`,
      from,
      by: [k * by[0], k * by[1], k * by[2]],
    },
  ];
}

/** Modules with parts that have places, by the table of the balance. */
function moduleGaps({ columns, rows }: DetailTable) {
  const place = (name: string) => columns.findIndex((c) => c.name === name);
  const [label, gap, u] = [place('module'), place('gap'), place('u of the gap')];
  const centre = ['centre X', 'centre Y', 'centre Z'].map(place);
  return rows.flatMap((row) => {
    const at = centre.map((i) => row[i]);
    const [x, y, z] = at;
    const kg = row[gap];
    if (![x, y, z, kg].every((n) => typeof n === 'number')) return [];
    const shown = { x: Number(kg), u: Number(row[u]), kind: 'mass', unit: 'kg' } as const;
    return [
      {
        words: `${row[label]} ${numberLine(shown)}`,
        at: [Number(x), Number(y), Number(z)] as const,
        kg: Number(kg),
      },
    ];
  });
}

/** Bodies of the parts that the search suspects first. */
function suspectIds(
  sheet: AnswerSheet | undefined,
  model: MapModel | undefined,
): ReadonlySet<string> {
  const rows = sheet?.detail?.rows.slice(0, LABELLED) ?? [];
  const bodies = model?.bodies.filter((b) => b.kind === 'part') ?? [];
  return new Set(
    rows.flatMap(
      ([, part]) => bodies.find(({ label, name }) => part === `${label} ${name}`)?.id ?? [],
    ),
  );
}
