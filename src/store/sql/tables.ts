import type { Generated } from 'kysely';

/** One change: what is asked for by SQL in columns, the whole of it as canonical text in `body`. */
export interface ChangesTable {
  /** Order of arrival over all studies. */
  number: Generated<number>;
  study: string;
  /** Arrival number within the study, from 1 without gaps. */
  at: number;
  id: string;
  device: string;
  seq: number;
  clock: string;
  gesture: string;
  undoes: string | null;
  by: string;
  words: string;
  author: string;
  /** ISO 8601, UTC. */
  received: string;
  body: string;
}

/** The one row that says which migrations have run. */
export interface SchemaTable {
  version: number;
}

export interface Tables {
  changes: ChangesTable;
  schema: SchemaTable;
}
