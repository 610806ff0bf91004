import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useClient } from '../app/desk-client.ts';
import { useHeader } from '../app/study-header.ts';
import { Refusals } from '../parts/refusals.tsx';
import { studyPath } from '../worker/api.ts';

/** Ways in and out: more tables, and the report of the study as it stands, written by the server. */
export function InAndOut() {
  const { api } = useClient();
  const { study, title } = useHeader();
  const [state, setState] = useState<'idle' | 'writing'>('idle');
  const [error, setError] = useState<unknown>();
  const write = async () => {
    setState('writing');
    setError(undefined);
    try {
      saveAs(await api.file(`${studyPath(study)}/report.pdf`), `${title}.pdf`);
    } catch (problem) {
      setError(problem);
    }
    setState('idle');
  };
  return (
    <section>
      <p>
        <Link to="/s/$study/import" params={{ study }}>
          Import tables
        </Link>
      </p>
      <button type="button" disabled={state === 'writing'} onClick={() => void write()}>
        {state === 'writing' ? 'Writing the report …' : 'Report as PDF'}
      </button>
      <Refusals error={error} />
    </section>
  );
}

function saveAs(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
