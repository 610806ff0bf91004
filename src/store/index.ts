/**
 * store: where changes and blobs are kept.
 *
 * The port, an in-memory and an SQLite implementation behind it, migrations, projections that
 * can be rebuilt, and content-addressed blobs.
 * Depends on study and quantity. Stays away from calculation, HTTP and wording.
 */
export { asFileRefusal, type Hashed, makeFolder, syncFolder, writeHashed } from './files.ts';
export * from './indexed/index.ts';
export * from './memory-store.ts';
export * from './port.ts';
export * from './sqlite/open-sqlite-store.ts';
