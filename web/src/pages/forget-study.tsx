import { useState } from 'react';
import { useClient } from '../app/desk-client.ts';
import { counted } from '../parts/counted.ts';
import { Refusals } from '../parts/refusals.tsx';
import { SheetDialog } from '../parts/sheet-dialog.tsx';
import type { ListedStudy } from '../worker/study-list.ts';

export interface ForgetStudyProps {
  readonly study: ListedStudy;
  readonly onForgotten: () => void;
}

/** Takes the copy of a study off this device; the server's stays. */
export function ForgetStudy({ study, onForgotten }: ForgetStudyProps) {
  const { desk } = useClient();
  const [isAsked, setIsAsked] = useState(false);
  const [error, setError] = useState<unknown>();
  const forget = async () => {
    try {
      await desk.forget(study.study);
      setIsAsked(false);
      onForgotten();
    } catch (problem) {
      setError(problem);
    }
  };
  return (
    <>
      <button type="button" onClick={() => setIsAsked(true)}>
        Take off this device<span className="heard">: {study.title}</span>
      </button>
      {isAsked && (
        <SheetDialog
          title={`Take ${study.title} off this device`}
          onClose={() => setIsAsked(false)}
        >
          <p>
            The copy in this browser is deleted, photographs included. The server keeps its own.
          </p>
          {study.waiting > 0 && (
            <p className="open">
              {counted(study.waiting, 'change')} made here {study.waiting === 1 ? 'was' : 'were'}{' '}
              never sent, and would be lost.
            </p>
          )}
          <Refusals error={error} />
          <button type="button" className="primary" onClick={() => void forget()}>
            Delete the copy{study.waiting > 0 && ' and what was not sent'}
          </button>
        </SheetDialog>
      )}
    </>
  );
}
