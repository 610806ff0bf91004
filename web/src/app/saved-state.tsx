import { useState } from 'react';
import { RefusalError } from '../../../src/study/index.ts';
import { counted } from '../parts/counted.ts';
import { Refusals } from '../parts/refusals.tsx';
import { SheetDialog } from '../parts/sheet-dialog.tsx';
import type { SaveState } from '../worker/save-state.ts';
import { useClient, useSaveState } from './desk-client.ts';
import { isNearlyFull, useDeviceStorage } from './device-storage.ts';
import { OnThisDevice } from './on-this-device.tsx';

/** How far what was recorded here has come: on this device, on the server; a touch tells more. */
export function SavedState() {
  const state = useSaveState();
  const storage = useDeviceStorage();
  const isFull = storage !== undefined && isNearlyFull(storage);
  const [shown, setShown] = useState(false);
  const isOpen = isFull || state.waiting > 0 || state.unreachable !== undefined;
  return (
    <>
      <div role="status">
        <button type="button" className={isOpen ? 'open' : ''} onClick={() => setShown(true)}>
          {wordsOf(state)}
          {isFull && ', device nearly full'}
        </button>
      </div>
      {shown && (
        <SheetDialog title="What is saved, and where" onClose={() => setShown(false)}>
          <SavedMore state={state} onDone={() => setShown(false)} />
          <OnThisDevice />
        </SheetDialog>
      )}
    </>
  );
}

function wordsOf({ waiting, unreachable, refused, unkept }: SaveState): string {
  if (refused) return 'change refused';
  if (unkept !== undefined && waiting > 0) return `${waiting} not saved`;
  if (waiting > 0) return unreachable === undefined ? `sending ${waiting}` : `${waiting} kept here`;
  return unreachable === undefined ? 'saved' : 'no server, all sent';
}

function SavedMore({ state, onDone }: { readonly state: SaveState; readonly onDone: () => void }) {
  const { desk } = useClient();
  const { unreachable, refused, unkept } = state;
  const [first, ...more] = refused?.refusals ?? [];
  return (
    <>
      <p>{placeWords(state)}</p>
      {unreachable !== undefined && <p className="open">{unreachable}</p>}
      {unkept !== undefined && (
        <p className="open">
          This browser keeps nothing more ({unkept}). Leave this page open until all is sent.
        </p>
      )}
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

function placeWords({ waiting, files, unkept }: SaveState): string {
  if (waiting === 0) return 'Everything recorded here is on the server’s disk.';
  const what = `${counted(waiting, 'change')}${files > 0 ? ` with ${counted(files, 'file')}` : ''}`;
  const where = unkept === undefined ? 'on this device’s disk' : 'held by this page only';
  return `${what} ${waiting === 1 ? 'is' : 'are'} ${where}, to be sent to the server.`;
}
