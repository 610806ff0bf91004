import type { Insertable, Selectable } from 'kysely';
import type { Arrived } from '../port.ts';
import type { StoredText } from '../stored-text.ts';
import type { ChangesTable } from './tables.ts';

/** How a change came in. */
export type Arrival = Pick<Arrived, 'at' | 'author' | 'received'>;

export function rowOf({ change, body }: StoredText, arrival: Arrival): Insertable<ChangesTable> {
  const { study, id, device, seq, clock, gesture, by, words } = change;
  const undoes = change.undoes ?? null;
  return { study, id, device, seq, clock, gesture, undoes, by, words, body, ...arrival };
}

type ArrivedRow = Pick<Selectable<ChangesTable>, 'at' | 'author' | 'received' | 'body'>;

export const arrivedOf = ({ at, author, received, body }: ArrivedRow): Arrived => ({
  at,
  author,
  received,
  change: JSON.parse(body),
});
