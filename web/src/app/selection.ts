import { useNavigate, useSearch } from '@tanstack/react-router';
import { useCallback } from 'react';

/** The part in hand: one for the map, the table and all else, kept in the address. */
export interface Selection {
  /** Id of the selected node; undefined when nothing is. */
  readonly selected: string | undefined;
  readonly select: (id: string | undefined) => void;
}

export function useSelection(): Selection {
  const selected = useSearch({ strict: false, select: (search) => search.part });
  const navigate = useNavigate();
  const select = useCallback(
    (id: string | undefined) => {
      void navigate({
        to: '.',
        search: (before) => ({ ...before, part: id }),
        replace: true,
        resetScroll: false,
      });
    },
    [navigate],
  );
  return { selected, select };
}
