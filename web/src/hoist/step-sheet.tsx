import { useState } from 'react';
import type { GateState } from '../../../src/study/index.ts';
import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { useSelection } from '../app/selection.tsx';
import { counted } from '../parts/counted.ts';
import { numberLine } from '../parts/number-text.ts';
import { Refusals } from '../parts/refusals.tsx';
import type { HoistStep } from '../worker/hoist-model.ts';
import { GateForm } from './gate-form.tsx';

/** One step: what stops it, its gates, what to measure first, what is left after it, and its mark. */
export function StepSheetShown({
  step,
  names,
}: {
  readonly step: HoistStep;
  readonly names: readonly string[];
}) {
  return (
    <div className="hoist-step">
      <div className="hoist-todo">
        {step.notShown.map((why) => (
          <p key={why} className="open">
            {why}
          </p>
        ))}
        <Holds step={step} />
        <Gates step={step} names={names} />
      </div>
      <div className="hoist-balance">
        <Mark step={step} />
        <Balance step={step} />
        <PartsOff step={step} />
      </div>
    </div>
  );
}

/** Holds in sight before the rest folds away. */
const HOLDS_IN_SIGHT = 2;

function Holds({ step: { holds } }: { readonly step: HoistStep }) {
  if (holds.length === 0) return null;
  const rest = holds.slice(HOLDS_IN_SIGHT);
  return (
    <section aria-label="Measure first">
      <h2>Measure first</h2>
      <HoldRows holds={holds.slice(0, HOLDS_IN_SIGHT)} />
      {rest.length > 0 && (
        <details>
          <summary>{rest.length} more to measure first</summary>
          <HoldRows holds={rest} />
        </details>
      )}
    </section>
  );
}

const HoldRows = ({ holds }: { readonly holds: HoistStep['holds'] }) => (
  <ul className="hoist-rows">
    {holds.map((hold) => (
      <li key={`${hold.of.subject} ${hold.of.property}`}>
        <span>
          <b>{hold.label}</b>
          <br />
          {hold.words}; needed by {hold.needs.map((n) => `“${n.words}”`).join(', ')}
        </span>
        <em className="open">
          {hold.instrument === undefined
            ? 'no instrument at hand'
            : `${hold.instrument}, ${hold.minutes} min`}
        </em>
      </li>
    ))}
  </ul>
);

function Gates({ step, names }: { readonly step: HoistStep; readonly names: readonly string[] }) {
  const [open, setOpen] = useState<string>();
  if (step.gates.length === 0) return null;
  return (
    <section aria-label="Gates">
      <h2>Gates</h2>
      <ul className="hoist-rows">
        {step.gates.map((state) => (
          <li key={state.gate.id}>
            {state.gate.id === 'hoist-limit' ? (
              <p className="gate-line">
                {state.gate.title} <Says state={state} />
                <br />
                <span className="soft">recorded with the mark, from the prediction</span>
              </p>
            ) : (
              <button
                type="button"
                className="gate-row"
                aria-expanded={open === state.gate.id}
                onClick={() => setOpen(open === state.gate.id ? undefined : state.gate.id)}
              >
                {state.gate.title} <Says state={state} />
              </button>
            )}
            {open === state.gate.id && (
              <GateForm
                step={step.id}
                state={state}
                names={names}
                onDone={() => setOpen(undefined)}
              />
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Says({ state: { state, held, lacking } }: { readonly state: GateState }) {
  if (state === 'override' && held?.override)
    return (
      <em className="open">
        override by {held.override.who}: {held.override.why}
      </em>
    );
  return (
    <em className={state === 'complete' ? '' : 'open'}>
      {state}
      {held?.record &&
        lacking.length > 0 &&
        (held.lapsed ? `, ${lacking[0]}` : `, ${lacking.length} lacking`)}
    </em>
  );
}

function Mark({ step }: { readonly step: HoistStep }) {
  const { desk } = useClient();
  const [error, setError] = useState<unknown>();
  const act = (done: boolean) =>
    desk
      .atHoist({ do: 'mark', step: step.id, done }, recorder())
      .then(() => setError(undefined))
      .catch(setError);
  return (
    <>
      {step.standing === 'done' ? (
        <button type="button" onClick={() => act(false)}>
          Not done after all
        </button>
      ) : (
        <button type="button" className="primary hoist-mark" onClick={() => act(true)}>
          {step.label} is done
        </button>
      )}
      <Refusals error={error} />
      {!error && <Stops step={step} />}
    </>
  );
}

/** What the step waits for, a line each; its records stand beside with all their lines. */
const Stops = ({ step: { stops, gates } }: { readonly step: HoistStep }) => (
  <ul className="hoist-rows">
    {stops.map(({ place, value, why }) => {
      const gate = gates.find((g) => g.gate.id === place.column)?.gate;
      return (
        <li key={`${place.column} ${why}`}>
          <span>{gate?.title ?? (place.column === 'after' ? `${value} comes first` : why)}</span>
          <em className="open">{gate ? 'not complete' : 'stop'}</em>
        </li>
      );
    })}
  </ul>
);

const NUMBERS = [
  ['mass', 'left on the hoist'],
  ['x', 'centre, X'],
  ['y', 'centre, Y'],
  ['marginX', 'margin in X'],
  ['pulledX', 'with the pull'],
  ['limitX', 'asked for'],
  ['spareX', 'beyond it'],
  ['armLoad', 'most on one arm, by the split'],
  ['armMost', 'most on one arm, at all'],
  ['spareArm', 'one arm to spare'],
] as const;

function Balance({ step }: { readonly step: HoistStep }) {
  return (
    <section aria-label="Balance after the step">
      <h2>After the step</h2>
      <dl className="hoist-numbers">
        {NUMBERS.map(([name, words]) => {
          const out = step.outs[name];
          return (
            <div key={name}>
              <dt>{words}</dt>
              <dd>
                {out ? numberLine(out) : 'not known'}
                {out?.decision && (
                  <em className={out.decision.word === 'holds' ? '' : 'open'}>
                    {' '}
                    {out.decision.word}
                  </em>
                )}
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}

/** What comes off: a touch takes a part in hand, and it stays in hand on every sheet. */
function PartsOff({ step }: { readonly step: HoistStep }) {
  const { selected, select } = useSelection();
  if (step.parts.length === 0) return null;
  return (
    <details open={step.parts.some((p) => p.id === selected)}>
      <summary>{counted(step.parts.length, 'part')} come off</summary>
      <div className="hoist-parts">
        {step.parts.map(({ id, label, name }) => (
          <button
            key={id}
            type="button"
            aria-pressed={id === selected}
            onClick={() => select(id === selected ? undefined : id)}
          >
            {label} {name}
          </button>
        ))}
      </div>
    </details>
  );
}
