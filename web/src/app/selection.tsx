import { useNavigate, useRouter, useSearch } from '@tanstack/react-router';
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';

import { useClient } from './desk-client.ts';
import { recorder } from './preferences.ts';

/** The part in hand: one for the map, the table and all else. */
export interface Selection {
  /** Id of the selected node; undefined when nothing is. */
  readonly selected: string | undefined;
  readonly select: (id: string | undefined) => void;
}

const SelectionContext = createContext<Selection>({
  selected: undefined,
  select: () => undefined,
});
export const useSelection = (): Selection => useContext(SelectionContext);

/**
 * Keeps the part in hand in the address, so that it stays over pages and may be sent as a link.
 * It changes here at once and the address follows: keys held down lose no step.
 */
export function SelectionProvider({ children }: { readonly children: ReactNode }) {
  const { inAddress, put } = useAddress();
  const [selected, setSelected] = useState(inAddress());
  const search = useSearch({ strict: false, select: ({ part }) => part });
  const asked = useRef<symbol>(undefined);
  const select = useCallback(
    (id: string | undefined) => {
      const mine = Symbol();
      asked.current = mine;
      setSelected(id);
      void put(id).finally(() => {
        if (asked.current !== mine) return;
        asked.current = undefined;
        setSelected(inAddress());
      });
    },
    [put, inAddress],
  );
  useEffect(() => {
    if (asked.current === undefined) setSelected(search);
  }, [search]);
  const { desk } = useClient();
  useEffect(() => void desk.takeInHand(recorder(), selected), [desk, selected]);
  const selection = useMemo(() => ({ selected, select }), [selected, select]);
  return <SelectionContext value={selection}>{children}</SelectionContext>;
}

/** Reads and writes the part that the address names. */
function useAddress() {
  const router = useRouter();
  const navigate = useNavigate();
  const inAddress = useCallback(
    (): string | undefined => router.latestLocation.search.part,
    [router],
  );
  const put = useCallback(
    (id: string | undefined): Promise<void> =>
      navigate({
        to: '.',
        search: (before) => ({ ...before, part: id }),
        replace: true,
        resetScroll: false,
      }),
    [navigate],
  );
  return { inAddress, put };
}
