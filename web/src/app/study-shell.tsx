import { useQuery } from '@tanstack/react-query';
import { Link, Outlet, useParams, useRouter } from '@tanstack/react-router';
import { proxy } from 'comlink';
import { useState } from 'react';
import { Refusals } from '../parts/refusals.tsx';
import { WhyProvider } from '../parts/why-dialog.tsx';
import { useClient } from './desk-client.ts';
import { askToPersist } from './device-storage.ts';
import { GlovesButton } from './gloves-button.tsx';
import { InAndOut } from './in-and-out.tsx';
import { SavedState } from './saved-state.tsx';
import { SelectionProvider } from './selection.tsx';
import { SettingsButton } from './settings.tsx';
import { SheetNav } from './sheet-nav.tsx';
import { HeaderProvider } from './study-header.ts';
import { TitleBlock } from './title-block.tsx';
import { UndoButton } from './undo-button.tsx';

/** The sheet of one study: strip of pages above, title block below. */
export function StudyShell() {
  const { study } = useParams({ from: '/s/$study' });
  const { desk } = useClient();
  const [read, setRead] = useState(0);
  const router = useRouter();
  const opened = useQuery({
    queryKey: ['study', study, 'header'],
    queryFn: async () => {
      const header = await desk.open(study, proxy(setRead));
      void askToPersist();
      // All pages are fetched now: a server that goes away later takes none of them along.
      for (const route of Object.values(router.routesById)) void router.loadRouteChunk(route);
      return header;
    },
  });
  if (!opened.data) return <Opening read={read} error={opened.error} />;
  return (
    <HeaderProvider value={opened.data}>
      <SelectionProvider>
        <WhyProvider>
          <div className="sheet">
            <Strip />
            <main className="sheet-main">
              <Outlet />
            </main>
            <TitleBlock />
          </div>
        </WhyProvider>
      </SelectionProvider>
    </HeaderProvider>
  );
}

const Opening = ({ read, error }: { read: number; error: unknown }) => (
  <main className="sheet alone">
    <h1>Hoistside</h1>
    {error ? (
      <>
        <Refusals error={error} />
        <p>
          <Link to="/">To the studies</Link>
        </p>
      </>
    ) : (
      <p role="status">Reading the study: {read} changes so far.</p>
    )}
  </main>
);

function Strip() {
  return (
    <header className="strip">
      <Link to="/" className="brand">
        Hoistside
      </Link>
      <SheetNav />
      <div className="strip-right">
        <InAndOut />
        <SavedState />
        <UndoButton />
        <GlovesButton />
        <SettingsButton />
      </div>
    </header>
  );
}
