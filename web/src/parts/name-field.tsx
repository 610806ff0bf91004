import { useState } from 'react';
import { setPreferences, usePreferences } from '../app/preferences.ts';

/** Asks for a name with the first thing recorded in this browser; nothing once there is one. */
export function NameField() {
  const { by } = usePreferences();
  const [isAsked] = useState(by === '');
  if (!isAsked) return null;
  return (
    <label className="field">
      Your name, asked once
      <input
        value={by}
        autoComplete="name"
        placeholder="unnamed"
        onChange={(e) => setPreferences({ by: e.target.value })}
      />
    </label>
  );
}
