import type { Sha256 } from '../../study/index.ts';

/** Names of what a bundle holds; nothing else may be in it. */
export const MANIFEST = 'manifest.json';
export const CHANGES = 'changes.ndjson';
export const blobName = (hash: Sha256): string => `blobs/${hash}`;

/** The hash that a name is of; undefined when it names no blob. */
export const hashIn = (name: string): Sha256 | undefined =>
  /^blobs\/([0-9a-f]{64})$/.exec(name)?.[1];
