import { useId, useState } from 'react';
import { parseQuantity } from '../../../src/quantity/index.ts';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder, setPreferences, usePreferences } from '../app/preferences.ts';
import { CellShown } from '../parts/cell-shown.tsx';
import { FindingsList } from '../parts/findings-list.tsx';
import { NameField } from '../parts/name-field.tsx';
import { Refusals } from '../parts/refusals.tsx';
import type { MassUnit } from '../worker/weighing.ts';
import { ExpectedBands } from './expected-bands.tsx';
import { Keypad } from './keypad.tsx';

export interface ScaleEntryProps {
  readonly part: string;
  /** After a mass was kept: goes on to the next part that waits. */
  readonly onKept: () => void;
}

/** The part in hand on the scale: what is typed, and beside it what was to be expected. */
export function ScaleEntry({ part, onKept }: ScaleEntryProps) {
  const { desk } = useClient();
  const { scale } = usePreferences();
  const [text, setText] = useState('');
  const [unit, setUnit] = useState<MassUnit>('kg');
  const [error, setError] = useState<unknown>();
  const typed = { text, unit, scale };
  const { data: weighed } = useDesk(['weighed', typed], (d) => d.weighed(typed));
  const written = weighed?.written ?? '';
  const sheet = useExpected(part, written);
  const warnings = written === '' ? [] : (sheet?.findings ?? []).filter(isWarning);
  const keep = async () => {
    try {
      await desk.edit(
        {
          ...{ subject: part, property: 'mass', mode: 'again', written: [written] },
          ...{ how: 'measured', instrument: scale, note: '', why: '' },
        },
        recorder(),
      );
      setText('');
      setError(undefined);
      onKept();
    } catch (problem) {
      setError(problem);
    }
  };
  return (
    <form
      className="scale-entry"
      onSubmit={(event) => {
        event.preventDefault();
        if (written !== '') void keep();
      }}
    >
      <div className="scale-reading">
        <PartInHand part={part} />
        <MassField text={text} unit={unit} onText={setText} />
        <p className="scale-heard" role="status">
          {weighed && written !== '' ? (
            <>
              to be kept: <b>{written}</b>
              {weighed.spreadFrom !== '' && <small> (spread {weighed.spreadFrom})</small>}
            </>
          ) : (
            <span className="open">{weighed?.why}</span>
          )}
        </p>
        <ScaleChoice />
        {sheet && <ExpectedBands sheet={sheet} typed={kgOf(written)} />}
        <div role="alert">
          <FindingsList findings={warnings} />
        </div>
        <NameField />
        <Refusals error={error} />
      </div>
      <Keypad label="Keys for the mass" text={text} unit={unit} onText={setText} onUnit={setUnit} />
      <button type="submit" className="primary keep" disabled={written === ''}>
        {warnings.length > 0 ? 'Keep all the same' : 'Keep reading'}
      </button>
    </form>
  );
}

const isWarning = ({ code }: { readonly code: string }): boolean => code === 'mass-not-expected';

/** What was to be expected, with the typed mass in the place of the part's own. */
function useExpected(part: string, written: string) {
  const over = written === '' ? {} : { mass: written };
  const { data } = useDesk(
    ['answer', 'expected-mass', part, written],
    (d) => d.answer('expected-mass', part, over),
    part !== '',
  );
  return data;
}

const kgOf = (written: string): number | undefined => {
  const read = parseQuantity(written, 'mass');
  return read.ok ? read.value.x : undefined;
};

/** Its number and name, and the mass that the record has. */
function PartInHand({ part }: { readonly part: string }) {
  const { data: node } = useDesk(['node', part], (d) => d.node(part), part !== '');
  const mass = node?.cells.find((c) => c.property === 'mass');
  if (!node) return <h2 className="scale-part">No part in hand</h2>;
  return (
    <div className="scale-part">
      <h2>{node.name}</h2>
      <p className="soft">
        {node.label}
        {node.above !== '' && `, of ${node.above}`} · in the record:{' '}
        {mass ? (
          <CellShown
            cell={mass.cell}
            subject={node.id}
            property="mass"
            of={`mass of ${node.label}`}
          />
        ) : (
          'no mass'
        )}
      </p>
    </div>
  );
}

interface MassFieldProps {
  readonly text: string;
  readonly unit: MassUnit;
  readonly onText: (text: string) => void;
}

/** The number as large as the sheet allows; keys on the sheet take the place of a drawn keyboard. */
function MassField({ text, unit, onText }: MassFieldProps) {
  const id = useId();
  return (
    <div className="scale-number">
      <label htmlFor={id} className="heard">
        Mass in {unit}
      </label>
      <input
        id={id}
        value={text}
        inputMode="none"
        autoComplete="off"
        placeholder="0.00"
        onChange={(e) => onText(e.target.value)}
      />
      <span aria-hidden="true">{unit}</span>
    </div>
  );
}

/** The scale, chosen once for this browser: its spread goes with each mass. */
function ScaleChoice() {
  const { scale } = usePreferences();
  const scales = useDesk(['scales'], (d) => d.scales());
  return (
    <label className="scale-choice">
      Scale
      <input
        value={scale}
        list="scales"
        autoComplete="off"
        placeholder="which one"
        onChange={(e) => setPreferences({ scale: e.target.value })}
      />
      <datalist id="scales">
        {scales.data?.map((label) => (
          <option key={label} value={label} />
        ))}
      </datalist>
    </label>
  );
}
