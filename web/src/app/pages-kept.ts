import { useSyncExternalStore } from 'react';

/** Whether this browser keeps the pages themselves, to open them without a server. */
export type PagesKept =
  | { readonly kept: 'not yet' | 'yes' }
  | { readonly kept: 'no'; readonly why: string };

let state: PagesKept = { kept: 'not yet' };
const listeners = new Set<() => void>();

function tell(next: PagesKept): void {
  state = next;
  for (const listener of listeners) listener();
}

/** Has the browser keep the pages; where it does not, the page works on and says so. */
export async function keepPages(): Promise<void> {
  if (!('serviceWorker' in navigator)) {
    tell({ kept: 'no', why: 'this browser keeps pages of trusted, encrypted addresses only' });
    return;
  }
  try {
    const { installing } = await navigator.serviceWorker.register('/service-worker.js');
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'redundant')
        tell({ kept: 'no', why: 'not all of them could be fetched' });
    });
    await navigator.serviceWorker.ready;
    tell({ kept: 'yes' });
  } catch (error) {
    tell({ kept: 'no', why: error instanceof Error ? error.message : String(error) });
  }
}

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const usePagesKept = (): PagesKept => useSyncExternalStore(subscribe, () => state);
