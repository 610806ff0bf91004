import { useState } from 'react';
import { SheetDialog } from '../parts/sheet-dialog.tsx';
import { type Preferences, setPreferences, usePreferences } from './preferences.ts';

/** Name, day or night, and size of what is touched. */
export function SettingsButton() {
  const [shown, setShown] = useState(false);
  const { by } = usePreferences();
  return (
    <>
      <button type="button" onClick={() => setShown(true)}>
        {by === '' ? 'Your name' : by}
        <span className="heard">: settings of this browser</span>
      </button>
      {shown && (
        <SheetDialog title="This browser" onClose={() => setShown(false)}>
          <SettingsForm />
        </SheetDialog>
      )}
    </>
  );
}

function SettingsForm() {
  const { by, theme, size } = usePreferences();
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        event.currentTarget.closest('dialog')?.close();
      }}
    >
      <label>
        Your name, as it stands beside what you record
        <input value={by} onChange={(e) => setPreferences({ by: e.target.value })} />
      </label>
      <Choice
        legend="Sheet"
        options={['as the system', 'day', 'night']}
        value={theme}
        onChange={(chosen) => setPreferences({ theme: chosen })}
      />
      <Choice
        legend="Size of what is touched"
        options={['by the device', 'desk', 'hoist']}
        value={size}
        onChange={(chosen) => setPreferences({ size: chosen })}
      />
      <p className="soft">“hoist” makes all that is touched at least 16 mm, for gloves.</p>
    </form>
  );
}

interface ChoiceProps<T extends Preferences['theme'] | Preferences['size']> {
  readonly legend: string;
  readonly options: readonly T[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}

const Choice = <T extends Preferences['theme'] | Preferences['size']>({
  legend,
  options,
  value,
  onChange,
}: ChoiceProps<T>) => (
  <fieldset className="choice">
    <legend>{legend}</legend>
    {options.map((option) => (
      <label key={option}>
        <input
          type="radio"
          name={legend}
          checked={value === option}
          onChange={() => onChange(option)}
        />
        {option}
      </label>
    ))}
  </fieldset>
);
