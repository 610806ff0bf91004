import type { Generated, Kysely } from 'kysely';
import type { WordIndex } from './word-index.ts';

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

/** One row for each study that was taken out for good. */
export interface PurgedTable {
  study: string;
  /** ISO 8601, UTC. */
  purged: string;
  /** Hashes of blobs still to be taken off the disk, parted by commas; null when all is done. */
  blobs: string | null;
}

/** The one row that says which migrations have run. */
export interface SchemaTable {
  version: number;
}

/** Projection: one row a study. */
export interface StudiesTable {
  study: string;
  title: string;
  vehicle: string;
  /** 0 or 1. */
  invented: number;
  /** Condition in which the values of `nodes` stand. */
  condition: string;
  changes: number;
  parts: number;
  clock: string;
}

/** Projection: nodes of every kind but joints, with the values in force of parts. SI; null where missing. */
export interface NodesTable {
  place: number;
  study: string;
  id: string;
  kind: string;
  label: string;
  name: string;
  parent: string | null;
  /** Order in the fold of the change that added it: see orderOf. */
  added: string;
  /** 0 when it or a node above it is retired. */
  live: number;
  /** 1 for what is found as a part: live, and of that kind. */
  shown: number;
  count: number | null;
  mass: number | null;
  massU: number | null;
  thickness: number | null;
  x: number | null;
  y: number | null;
  z: number | null;
  material: string | null;
  process: string | null;
}

/**
 * Projection: which changes matter to what, so that one part can be made again without folding
 * the whole study. `node`: the change says something of this node, or adds this chunk of rows;
 * `parent`: it places something below this node; `root`: it adds a node below none; `study`: it
 * sets the study's header. The last two have no subject.
 */
export interface TouchesTable {
  study: string;
  what: 'node' | 'parent' | 'root' | 'study';
  subject: string;
  change: number;
}

export interface Tables {
  changes: ChangesTable;
  purged: PurgedTable;
  schema: SchemaTable;
  studies: StudiesTable;
  nodes: NodesTable;
  touches: TouchesTable;
}

/** A library under one query set: what differs between databases is behind `words`. */
export interface SqlLibrary {
  readonly db: Kysely<Tables>;
  readonly words: WordIndex;
}
