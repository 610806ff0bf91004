import { useState } from 'react';
import { RefusalError } from '../../../src/study/index.ts';
import { Refusals } from '../parts/refusals.tsx';
import { SheetDialog } from '../parts/sheet-dialog.tsx';
import type { SaveState } from '../worker/study-sync.ts';
import { useClient, useSaveState } from './desk-client.ts';

/** Whether what was recorded here is on the server's disk yet; a touch tells more. */
export function SavedState() {
  const state = useSaveState();
  const [shown, setShown] = useState(false);
  const isOpen = state.waiting > 0 || state.unreachable !== undefined;
  return (
    <>
      <div role="status">
        <button type="button" className={isOpen ? 'open' : ''} onClick={() => setShown(true)}>
          {wordsOf(state)}
        </button>
      </div>
      {shown && (
        <SheetDialog title="What is saved" onClose={() => setShown(false)}>
          <SavedMore state={state} onDone={() => setShown(false)} />
        </SheetDialog>
      )}
    </>
  );
}

function wordsOf({ waiting, unreachable, refused }: SaveState): string {
  if (refused) return 'change refused';
  if (waiting > 0) return unreachable === undefined ? 'saving' : `${waiting} not saved yet`;
  return unreachable === undefined ? 'saved' : 'no server';
}

function SavedMore({ state, onDone }: { readonly state: SaveState; readonly onDone: () => void }) {
  const { desk } = useClient();
  const { waiting, unreachable, refused } = state;
  const [first, ...more] = refused?.refusals ?? [];
  return (
    <>
      <p>
        {waiting === 0
          ? 'Everything recorded here is on the server’s disk.'
          : `${waiting} ${waiting === 1 ? 'change is' : 'changes are'} kept by this browser and not yet on the server’s disk.`}
      </p>
      {unreachable !== undefined && <p className="open">{unreachable}</p>}
      {refused && first && (
        <>
          <p>The server refused “{refused.words}”; what was recorded after it waits behind it.</p>
          <Refusals error={new RefusalError(first, ...more)} />
          <button
            type="button"
            className="primary"
            onClick={() => {
              void desk.dropRefused();
              onDone();
            }}
          >
            Take this change back, and send the others
          </button>
        </>
      )}
    </>
  );
}
