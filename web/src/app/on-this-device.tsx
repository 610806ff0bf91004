import { useState } from 'react';
import { useSaveState } from './desk-client.ts';
import { askToPersist, isNearlyFull, roomText, useDeviceStorage } from './device-storage.ts';
import { type PagesKept, usePagesKept } from './pages-kept.ts';

/** What this device keeps, how much room there is, and whether it opens without a server. */
export function OnThisDevice() {
  const pages = usePagesKept();
  const storage = useDeviceStorage();
  const { isCopied, others } = useSaveState();
  return (
    <>
      <h3>On this device</h3>
      <p>
        {isCopied
          ? 'This device has a copy of the whole study.'
          : 'The study is being copied to this device.'}{' '}
        {pagesWords(pages)}
      </p>
      {pages.kept === 'no' && location.protocol === 'https:' && (
        <p>
          <a href="/trust">How to have this device trust the server</a>
        </p>
      )}
      {storage && (
        <p className={isNearlyFull(storage) ? 'open' : ''}>
          {roomText(storage.used)} of {roomText(storage.quota)} that the browser gives are used.
          {isNearlyFull(storage) &&
            ' It is nearly full: have all sent, then take studies off this device at the list of studies.'}
        </p>
      )}
      {others.length > 0 && (
        <p>Also at this study now: {others.map((o) => `${o.by} (${o.device})`).join(', ')}.</p>
      )}
      {storage && <Persistence isPersistent={storage.isPersistent} />}
    </>
  );
}

function pagesWords(pages: PagesKept): string {
  if (pages.kept === 'no')
    return `The pages are not kept, and do not open without a server (${pages.why}).`;
  return pages.kept === 'yes'
    ? 'The pages are kept: they open without a server. Install them from the browser’s menu to have them beside other applications.'
    : 'The pages are being kept, to open without a server.';
}

function Persistence({ isPersistent }: { readonly isPersistent: boolean }) {
  const [asked, setAsked] = useState<boolean>();
  if (isPersistent || asked)
    return <p>The browser keeps it until you delete it, also when the disk gets full.</p>;
  return (
    <p>
      The browser may clear it by itself when the disk of the device gets full.{' '}
      <button type="button" onClick={() => void askToPersist().then(setAsked)}>
        Ask it to keep it
      </button>
      {asked === false && ' It did not promise to: install the application, then ask again.'}
    </p>
  );
}
