import { useState } from 'react';
import { WAYS, type Way } from '../../../src/quantity/index.ts';
import { useClient } from '../app/desk-client.ts';
import { recorder, usePreferences } from '../app/preferences.ts';
import { useSelection } from '../app/selection.tsx';
import { NameField } from '../parts/name-field.tsx';
import { NodePicker } from '../parts/node-picker.tsx';
import { Refusals } from '../parts/refusals.tsx';

/** Types in a claim as it is heard; what would answer it can be said later. */
export function ClaimForm({ onMade }: { readonly onMade: (claim: string) => void }) {
  const { desk } = useClient();
  const { by: name } = usePreferences();
  const { selected } = useSelection();
  const [words, setWords] = useState('');
  const [how, setHow] = useState<Way>('seen');
  const [by, setBy] = useState(name);
  const [about, setAbout] = useState(selected ?? '');
  const [error, setError] = useState<unknown>();
  const keep = async () => {
    // At once: the next claim may be typed while this one is being kept.
    setWords('');
    try {
      const id = await desk.claim({ words, how, by: by.trim() || recorder(), about });
      setError(undefined);
      onMade(id);
    } catch (problem) {
      setWords(words);
      setError(problem);
    }
  };
  return (
    <form
      className="claim-form"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <label className="field wide">
        What was said
        <input value={words} autoComplete="off" onChange={(e) => setWords(e.target.value)} />
      </label>
      <label className="field">
        Known how
        <select value={how} onChange={(e) => setHow(e.target.value as Way)}>
          {WAYS.map((way) => (
            <option key={way}>{way}</option>
          ))}
        </select>
      </label>
      <label className="field">
        Said by
        <input value={by} onChange={(e) => setBy(e.target.value)} />
      </label>
      <NodePicker
        title="About"
        value={about}
        onChange={setAbout}
        empty="the whole vehicle"
        without="vehicle"
      />
      <NameField />
      <button type="submit" className="primary">
        Keep the claim
      </button>
      <Refusals error={error} />
    </form>
  );
}
