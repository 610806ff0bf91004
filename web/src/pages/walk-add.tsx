import { useState } from 'react';
import type { Finding } from '../../../src/study/index.ts';
import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { FindingsList } from '../parts/findings-list.tsx';
import { Refusals } from '../parts/refusals.tsx';

/** Hands in timed speech: its file, and when second zero was. */
export function WalkAdd({ first }: { readonly first: boolean }) {
  const { desk } = useClient();
  const [file, setFile] = useState<File>();
  const [startedAt, setStartedAt] = useState('');
  const [film, setFilm] = useState('');
  const [findings, setFindings] = useState<readonly Finding[]>([]);
  const [error, setError] = useState<unknown>();
  const keep = async (chosen: File) => {
    try {
      const bytes = new Uint8Array(await chosen.arrayBuffer());
      const named = film.trim() === '' ? {} : { film: film.trim() };
      setFindings(
        await desk.spoken(
          { do: 'add', file: { name: chosen.name, bytes, startedAt, ...named } },
          recorder(),
        ),
      );
      setError(undefined);
    } catch (problem) {
      setError(problem);
    }
  };
  return (
    <form
      className="claim-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (file) void keep(file);
      }}
    >
      <h2 className="wide">{first ? 'Hand in what was said' : 'Another recording'}</h2>
      <p className="wide soft">
        Words with times from any recogniser: WebVTT, SubRip, or text whose lines open with a time.
        They are read on this device by rules; nothing goes out.
      </p>
      <label className="field">
        File with the words
        <input
          type="file"
          accept=".vtt,.srt,.txt,text/*"
          onChange={(e) => setFile(e.target.files?.[0])}
        />
      </label>
      <label className="field">
        Recording started
        <input
          type="datetime-local"
          value={startedAt}
          onChange={(e) => setStartedAt(e.target.value)}
        />
      </label>
      <label className="field">
        Name of the film, if there is one
        <input value={film} onChange={(e) => setFilm(e.target.value)} />
      </label>
      <button type="submit" className="primary" disabled={file === undefined}>
        Read the words
      </button>
      <Refusals error={error} />
      {findings.length > 0 && <FindingsList findings={findings} />}
    </form>
  );
}
