import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Refusals } from '../parts/refusals.tsx';
import { SheetDialog } from '../parts/sheet-dialog.tsx';
import { studyPath } from '../worker/api.ts';
import { useClient } from './desk-client.ts';
import { useHeader } from './study-header.ts';

/** Ways in and out: more tables, and the report of the study as it stands, written by the server. */
export function InAndOut() {
  const { api } = useClient();
  const { study, title } = useHeader();
  const [isWriting, setIsWriting] = useState(false);
  const [error, setError] = useState<unknown>();
  const write = async () => {
    setIsWriting(true);
    try {
      saveAs(await api.file(`${studyPath(study)}/report.pdf`), `${title}.pdf`);
    } catch (problem) {
      setError(problem);
    }
    setIsWriting(false);
  };
  return (
    <>
      <Link to="/s/$study/import" params={{ study }}>
        Import<span className="heard"> tables</span>
      </Link>
      <button type="button" disabled={isWriting} onClick={() => void write()}>
        {isWriting ? 'Writing …' : 'Report'}
        <span className="heard"> as PDF</span>
      </button>
      {error !== undefined && (
        <SheetDialog title="The report was not written" onClose={() => setError(undefined)}>
          <Refusals error={error} />
        </SheetDialog>
      )}
    </>
  );
}

function saveAs(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
