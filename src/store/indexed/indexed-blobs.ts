import type { Sha256 } from '../../study/index.ts';
import { blobNotFound, mustBeHash } from '../blob-name.ts';
import type { BlobHead, Blobs } from '../port.ts';
import { done, read, WHERE, walked, written } from './indexed-requests.ts';
import { BLOBS, type BlobRow, BY_SIZE } from './indexed-schema.ts';
import type { IndexedDatabase } from './indexed-types.ts';

/** Content-addressed bytes in a browser: hashed first, then kept in one transaction. */
export class IndexedBlobs implements Blobs {
  constructor(private readonly db: IndexedDatabase) {}

  /** Held in memory while it is hashed: a browser digests in one go only. */
  async putBlob(chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>): Promise<Sha256> {
    const bytes = await joined(chunks);
    const hash = await sha256(bytes);
    const row: BlobRow = { hash, size: bytes.length, bytes };
    await written(this.db, [BLOBS], (rows) => done(rows(BLOBS).put(row)));
    return hash;
  }

  async *getBlob(hash: Sha256): AsyncIterable<Uint8Array> {
    mustBeHash(hash);
    const row = await read(this.db, [BLOBS], (rows) => done(rows(BLOBS).get(hash)));
    if (row === undefined) throw blobNotFound(WHERE, hash);
    yield (row as BlobRow).bytes;
  }

  async hasBlob(hash: Sha256): Promise<boolean> {
    mustBeHash(hash);
    const key = await read(this.db, [BLOBS], (rows) => done(rows(BLOBS).getKey(hash)));
    return key !== undefined;
  }

  async *blobs(): AsyncIterable<BlobHead> {
    yield* await read(this.db, [BLOBS], (rows) =>
      walked(rows(BLOBS).index(BY_SIZE).openKeyCursor(), ({ key }) => headOf(key)),
    );
  }
}

function headOf(key: unknown): BlobHead {
  const [hash, bytes] = key as [Sha256, number];
  return { hash, bytes };
}

async function joined(
  chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
): Promise<Uint8Array<ArrayBuffer>> {
  const pieces: Uint8Array[] = [];
  for await (const piece of chunks) pieces.push(Uint8Array.from(piece));
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<Sha256> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
