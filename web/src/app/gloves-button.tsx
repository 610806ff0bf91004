import { setPreferences, usePreferences } from './preferences.ts';

/** Makes all that is touched large enough for gloves, and back, in one touch. */
export function GlovesButton() {
  const { size } = usePreferences();
  const on = size === 'hoist';
  return (
    <button
      type="button"
      aria-pressed={on}
      onClick={() => setPreferences({ size: on ? 'by the device' : 'hoist' })}
    >
      Gloves<span className="heard">: all that is touched at least 16 mm</span>
    </button>
  );
}
