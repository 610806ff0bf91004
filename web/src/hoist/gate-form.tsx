import { useState } from 'react';
import { type GateItem, GLOVE_CLASSES } from '../../../src/data/index.ts';
import { type GateState, takesNumber, unitOfItem } from '../../../src/study/index.ts';
import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { Refusals } from '../parts/refusals.tsx';
import { Keypad } from '../scale/keypad.tsx';
import { IsoSign } from './iso-sign.tsx';

type Written = Readonly<Record<string, string>>;

export interface GateFormProps {
  readonly step: string;
  readonly state: GateState;
  readonly names: readonly string[];
  readonly onDone: () => void;
}

/** The record of a gate, line by line. It is complete or not complete; the tool says nothing more. */
export function GateForm({ step, state, names, onDone }: GateFormProps) {
  const { gate, held } = state;
  const { desk } = useClient();
  const [written, setWritten] = useState<Written>(() =>
    Object.fromEntries(
      (held?.lapsed ? [] : (held?.record?.answers ?? [])).map((a) => [a.item, a.asWritten]),
    ),
  );
  const [keysFor, setKeysFor] = useState<string>();
  const [error, setError] = useState<unknown>();
  const put = (item: string, text: string) => setWritten((w) => ({ ...w, [item]: text }));
  const keep = () =>
    desk
      .atHoist({ do: 'record', step, gate: gate.id, written }, recorder())
      .then(onDone)
      .catch(setError);
  return (
    <div className="gate-form">
      <p>{gate.words}</p>
      <p className="signs">
        {gate.signs.map((sign) => (
          <IsoSign key={sign} sign={sign} />
        ))}
      </p>
      <div className="gate-lines">
        {gate.items.map((item) => (
          <Line
            key={item.id}
            item={item}
            text={written[item.id] ?? ''}
            names={names}
            onText={(text) => put(item.id, text)}
            onKeys={() => setKeysFor(item.id)}
          />
        ))}
      </div>
      {keysFor !== undefined && (
        <Keypad
          label={`Keys for: ${gate.items.find((i) => i.id === keysFor)?.words ?? ''}`}
          text={written[keysFor] ?? ''}
          onText={(text) => put(keysFor, text)}
        />
      )}
      <Refusals error={error} />
      <p className="acts">
        <button type="button" className="primary" onClick={keep}>
          Keep the record
        </button>
      </p>
      {gate.override && <Override step={step} state={state} onDone={onDone} />}
    </div>
  );
}

interface LineProps {
  readonly item: GateItem;
  readonly text: string;
  readonly names: readonly string[];
  readonly onText: (text: string) => void;
  readonly onKeys: () => void;
}

function Line({ item, text, names, onText, onKeys }: LineProps) {
  if (item.takes === 'yes')
    return (
      <button
        type="button"
        className="gate-yes"
        aria-pressed={text === 'yes'}
        onClick={() => onText(text === 'yes' ? '' : 'yes')}
      >
        {item.words} <b>{text === 'yes' ? 'yes' : 'not confirmed'}</b>
      </button>
    );
  const unit = unitOfItem(item);
  return (
    <div className="gate-line">
      <label className="field">
        <span>
          {item.words}
          {unit !== undefined && unit !== '1' && `, in ${unit === 'Cel' ? '°C' : unit}`}
        </span>
        <input
          type={item.takes === 'date' ? 'date' : 'text'}
          inputMode={takesNumber(item) ? 'decimal' : 'text'}
          value={text}
          onFocus={takesNumber(item) ? onKeys : undefined}
          onChange={(e) => onText(e.target.value)}
        />
      </label>
      <Choices item={item} names={names} onText={onText} />
    </div>
  );
}

/** What gloves can touch in place of typing: people named before, classes of gloves. */
function Choices({ item, names, onText }: Pick<LineProps, 'item' | 'names' | 'onText'>) {
  const choices =
    item.takes === 'person'
      ? [...new Set([recorder(), ...names])].filter((name) => name !== 'unnamed')
      : item.takes === 'glove class'
        ? Object.keys(GLOVE_CLASSES).sort()
        : [];
  if (choices.length === 0) return null;
  return (
    <fieldset className="gate-choices" aria-label={item.words}>
      {choices.map((choice) => (
        <button key={choice} type="button" onClick={() => onText(choice)}>
          {choice}
        </button>
      ))}
    </fieldset>
  );
}

function Override({ step, state, onDone }: Omit<GateFormProps, 'names'>) {
  const { desk } = useClient();
  const [who, setWho] = useState('');
  const [why, setWhy] = useState('');
  const [error, setError] = useState<unknown>();
  const act = { do: 'override', step, gate: state.gate.id, who, why } as const;
  return (
    <details>
      <summary>Take it on without the record</summary>
      <p>Name and reason go into the report. Local rules may not allow it.</p>
      <label className="field">
        <span>Who takes it on</span>
        <input value={who} onChange={(e) => setWho(e.target.value)} />
      </label>
      <label className="field">
        <span>Reason</span>
        <input value={why} onChange={(e) => setWhy(e.target.value)} />
      </label>
      <Refusals error={error} />
      <button
        type="button"
        onClick={() => desk.atHoist(act, recorder()).then(onDone).catch(setError)}
      >
        Override {state.gate.title}
      </button>
    </details>
  );
}
