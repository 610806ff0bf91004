import { useQuery } from '@tanstack/react-query';
import { Link, Outlet, useParams, useRouter } from '@tanstack/react-router';
import { proxy } from 'comlink';
import { useEffect, useRef, useState } from 'react';
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
import { HeaderProvider, useHeader } from './study-header.ts';
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
          <FirstPage />
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

/** How long after opening a study's walkaround may still come to the front, while changes arrive. */
const OPENING_MS = 15_000;

/** A study opened at its top shows its walkaround first, where it has one: that is the talk of the hour. */
function FirstPage() {
  const { study, speeches } = useHeader();
  const router = useRouter();
  const isTop = (): boolean => router.latestLocation.pathname.replace(/\/$/, '') === `/s/${study}`;
  const opened = useRef(isTop() ? Date.now() : 0);
  useEffect(() => {
    if (speeches === 0 || opened.current === 0) return;
    const isFresh = Date.now() - opened.current < OPENING_MS;
    opened.current = 0;
    if (isFresh && isTop())
      void router.navigate({ to: '/s/$study/walkaround', params: { study }, replace: true });
  });
  return null;
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
