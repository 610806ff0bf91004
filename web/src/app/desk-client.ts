import { QueryClient, type UseQueryResult, useQuery } from '@tanstack/react-query';
import { proxy, type Remote, wrap } from 'comlink';
import { createContext, useContext, useSyncExternalStore } from 'react';
import { RefusalError } from '../../../src/study/index.ts';
import { Api, Unreachable } from '../worker/api.ts';
import type { Desk } from '../worker/desk.ts';
import { carryRefusals } from '../worker/refusal-transfer.ts';
import { NOTHING_WAITS, type SaveState } from '../worker/save-state.ts';
import { deviceId } from './preferences.ts';
import { useHeader } from './study-header.ts';
import { takeToken, watchToken } from './token.ts';

/** Study answers live until the worker says that the study has changed. */
export const queries = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: Number.POSITIVE_INFINITY,
      // The worker answers with or without a network.
      networkMode: 'always',
      retry: false,
      throwOnError: (error) => !(error instanceof RefusalError || error instanceof Unreachable),
      refetchOnWindowFocus: false,
    },
  },
});

/** The worker with the open study, and the server's interface. */
export interface Client {
  readonly desk: Remote<Desk>;
  readonly api: Api;
}

let saveState: SaveState = NOTHING_WAITS;
const listeners = new Set<() => void>();

export async function startClient(): Promise<Client> {
  carryRefusals();
  const token = await takeToken();
  watchToken(token);
  const { origin } = location;
  const worker = new Worker(new URL('../worker/study-worker.ts', import.meta.url), {
    type: 'module',
  });
  const desk = wrap<Desk>(worker);
  void desk.start({ origin, token, device: deviceId() });
  void desk.listen(
    proxy((told) => {
      if ('changed' in told) void queries.invalidateQueries({ queryKey: ['study'] });
      else {
        saveState = told.state;
        for (const listener of listeners) listener();
      }
    }),
  );
  const nudge = () => void desk.nudge();
  addEventListener('online', nudge);
  document.addEventListener('visibilitychange', () => document.hidden || nudge());
  return { desk, api: new Api(origin, token) };
}

const ClientContext = createContext<Client | undefined>(undefined);
export const ClientProvider = ClientContext.Provider;

export function useClient(): Client {
  const client = useContext(ClientContext);
  if (!client) throw new TypeError('the page stands outside its client');
  return client;
}

/** What the worker says of the open study; asked again whenever the study has changed. */
export function useDesk<T>(
  key: readonly unknown[],
  ask: (desk: Remote<Desk>) => Promise<T>,
  enabled = true,
): UseQueryResult<T> {
  const { desk } = useClient();
  const { study } = useHeader();
  return useQuery({
    queryKey: ['study', study, ...key],
    queryFn: () => ask(desk),
    enabled,
  });
}

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};
export const useSaveState = (): SaveState => useSyncExternalStore(subscribe, () => saveState);
