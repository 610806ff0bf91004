import { useMemo, useState } from 'react';
import type { DetailTable } from '../../../src/engine/index.ts';
import { unitSymbol } from '../../../src/quantity/index.ts';
import { plainText } from '../answer/groups-table.tsx';
import { useDesk } from '../app/desk-client.ts';
import { MapSheet } from '../map/map-sheet.tsx';
import { canBeDrawn } from '../map/views.ts';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
import type { MapModel } from '../worker/map-model.ts';
import type { StepPlace } from '../worker/step-places.ts';

const ROWS = [['plan'], ['side']] as const;

/** The steps in order, one at a time: what is touched carries a label on the map, what is off is gone from it. */
export function WayStepper({ sheet }: { readonly sheet: AnswerSheet }) {
  const steps = useMemo(() => stepsOf(sheet.detail), [sheet.detail]);
  const words = steps.map((s) => s.what);
  const { data: places } = useDesk(['step-places', words], (d) => d.stepPlaces(words));
  const { data: model } = useDesk(['map'], (d) => d.map());
  const [at, setAt] = useState(0);
  const step = steps[Math.min(at, steps.length - 1)];
  const touched = useMemo(() => touchedIn(model, places?.[at]), [model, places, at]);
  const left = useMemo(() => leftOn(model, places ?? [], at), [model, places, at]);
  if (!step) return null;
  return (
    <div className="way-steps">
      <div className="way-list">
        <div className="acts">
          <button type="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
            Step back
          </button>
          <button
            type="button"
            className="primary"
            disabled={at >= steps.length - 1}
            onClick={() => setAt(at + 1)}
          >
            Next step
          </button>
        </div>
        <p role="status" className="way-now">
          <b>
            Step {at + 1} of {steps.length}: {step.what}
          </b>
          <br />
          {step.facts.join(' · ')}
        </p>
        <ol>
          {steps.map((s, i) => (
            <li key={s.what}>
              <button
                type="button"
                className={i < at ? 'done' : ''}
                aria-current={i === at ? 'step' : undefined}
                onClick={() => setAt(i)}
              >
                <span>{s.what}</span>
                <small>{s.time}</small>
              </button>
            </li>
          ))}
        </ol>
      </div>
      {left && canBeDrawn(left) && (
        <MapSheet model={left} marks={[]} rows={ROWS} labelled={touched} tall />
      )}
    </div>
  );
}

interface Step {
  readonly what: string;
  readonly time: string;
  readonly facts: readonly string[];
}

/** Steps as the table of the answer has them. */
function stepsOf(detail: DetailTable | undefined): Step[] {
  if (!detail) return [];
  const { columns, rows } = detail;
  const cell = (row: DetailTable['rows'][number], name: string): string => {
    const i = columns.findIndex((c) => c.name === name);
    const [value, column] = [row[i], columns[i]];
    if (typeof value !== 'number' || !column?.kind) return String(value ?? '');
    const unit = column.unit ?? '1';
    return `${plainText(value, column.kind, unit)} ${unitSymbol(unit)}`.trim();
  };
  return rows.map((row) => {
    const fact = (name: string, words: (text: string) => string): string[] => {
      const text = cell(row, name);
      return text === '' ? [] : [words(text)];
    };
    return {
      what: cell(row, 'what'),
      time: cell(row, 'time'),
      facts: [
        ...fact('elements', (n) => `${n} of them`),
        ...fact('tool', (t) => t),
        ...fact('time', (t) => t),
        ...fact('people', (p) => (p === '1' ? '1 person' : `${p} people`)),
        ...fact('on removal', (w) => w),
        ...fact('cost', (c) => `cost ${c}`),
        ...fact('fluid', (f) => `fluid: ${f}`),
        ...fact('if locked', (w) => `if locked: ${w}`),
      ],
    };
  });
}

/** Bodies that carry a label: what a step touches, or the parts of an assembly that is not drawn itself. */
function touchedIn(model: MapModel | undefined, place: StepPlace | undefined): ReadonlySet<string> {
  const ids = new Set(place?.touches);
  const drawn = model?.bodies.filter((b) => ids.has(b.id)) ?? [];
  const missing = [...ids].filter((id) => !drawn.some((b) => b.id === id));
  const inside = model?.bodies.filter((b) => b.parent !== null && missing.includes(b.parent)) ?? [];
  return new Set([...drawn, ...inside].map((b) => b.id));
}

/** The drawing without what the steps before have taken off. */
function leftOn(
  model: MapModel | undefined,
  places: readonly StepPlace[],
  at: number,
): MapModel | undefined {
  const off = new Set(places.slice(0, at).flatMap((p) => p.takesOff));
  return model && { ...model, bodies: model.bodies.filter((b) => !off.has(b.id)) };
}
