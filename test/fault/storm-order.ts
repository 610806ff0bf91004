/** What a library can be killed at. */
export const STORM_ACTS = ['edit', 'sync', 'import', 'blob', 'backup'] as const;
export type StormAct = (typeof STORM_ACTS)[number];

/** What a child is told to do: see storm-child.ts. */
export interface StormOrder {
  readonly dir: string;
  readonly backups: string;
  /** Another number for each run. */
  readonly run: number;
  readonly what: readonly StormAct[];
}

export const STORM_STUDY = 'study-storm';
/** Rows of each imported table: all of them come, or none. */
export const IMPORT_ROWS = 15;

/** Something that the child was told is done, and on disk. */
export interface Told {
  readonly what: StormAct;
  /** Id of a change, prefix of the labels of an import, hash of a blob, folder of a backup. */
  readonly value: string;
}
