import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { Refusals } from '../parts/refusals.tsx';

/** Makes a study with its vehicle, and opens it. */
export function NewStudyForm({ onMade }: { readonly onMade: () => void }) {
  const { api } = useClient();
  const navigate = useNavigate();
  const [title, setTitle] = useState('');
  const [vehicle, setVehicle] = useState('');
  const [invented, setInvented] = useState(false);
  const [error, setError] = useState<unknown>();
  const make = async () => {
    try {
      const { study } = await api.newStudy({ title, vehicle, invented, by: recorder() });
      onMade();
      await navigate({ to: '/s/$study/import', params: { study } });
    } catch (problem) {
      setError(problem);
    }
  };
  return (
    <form
      className="new-study"
      onSubmit={(event) => {
        event.preventDefault();
        void make();
      }}
    >
      <h2>A new study</h2>
      <label className="field">
        Title
        <input required value={title} onChange={(e) => setTitle(e.target.value)} />
      </label>
      <label className="field">
        Vehicle
        <input required value={vehicle} onChange={(e) => setVehicle(e.target.value)} />
      </label>
      <label className="check">
        <input type="checkbox" checked={invented} onChange={(e) => setInvented(e.target.checked)} />
        Invented: mark every sheet so
      </label>
      <button type="submit" className="primary">
        Make it
      </button>
      <Refusals error={error} />
    </form>
  );
}
