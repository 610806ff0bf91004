import { useState } from 'react';
import { useClient } from '../app/desk-client.ts';
import { useHeader } from '../app/study-shell.tsx';
import { Refusals } from '../parts/refusals.tsx';
import { studyPath } from '../worker/api.ts';

/** Has the server write the report of the study as it stands, and saves it. */
export function ReportButton() {
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
