import { randomUUID } from 'node:crypto';
import { constants, createReadStream } from 'node:fs';
import { access, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Sha256 } from '../study/index.ts';
import { blobNotFound, mustBeHash } from './blob-name.ts';
import { asFileRefusal, makeFolder, syncFolder, writeAll, writeHashed } from './files.ts';
import type { BlobHead, Blobs } from './port.ts';

/** Content-addressed bytes in a folder: `<first two digits of the hash>/<hash>`. */
export class FileBlobs implements Blobs {
  readonly #folder: string;

  constructor(folder: string) {
    this.#folder = folder;
  }

  /**
   * On disk under its hash when it returns: hashed while written to a temporary file, fsynced,
   * renamed, folder fsynced. Nothing is left when it fails.
   * @throws RefusalError `disk-full`, `read-only`.
   */
  async putBlob(chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>): Promise<Sha256> {
    const temporary = join(this.#folder, `incoming-${randomUUID()}`);
    try {
      const { hash } = await writeHashed(chunks, temporary);
      await this.#settle(temporary, hash);
      return hash;
    } catch (error) {
      await rm(temporary, { force: true });
      throw asFileRefusal(error, this.#folder);
    }
  }

  async *getBlob(hash: Sha256): AsyncIterable<Uint8Array> {
    if (!(await this.hasBlob(hash))) throw blobNotFound(this.#folder, hash);
    yield* createReadStream(this.#path(hash));
  }

  /** @throws RefusalError `bad-call` for what is no SHA-256 in lower-case hex. */
  async hasBlob(hash: Sha256): Promise<boolean> {
    mustBeHash(hash);
    return access(this.#path(hash), constants.R_OK).then(
      () => true,
      () => false,
    );
  }

  async *blobs(): AsyncIterable<BlobHead> {
    for (const folder of (await readdir(this.#folder)).sort()) {
      if (!/^[0-9a-f]{2}$/.test(folder)) continue;
      for (const hash of (await readdir(join(this.#folder, folder))).sort())
        yield { hash, bytes: (await stat(this.#path(hash))).size };
    }
  }

  /** Takes away what uploads that were cut off have left, once nobody can be at them any more. */
  async sweep(): Promise<void> {
    for (const name of await readdir(this.#folder)) {
      const path = join(this.#folder, name);
      if (name.startsWith('incoming-') && (await isOld(path))) await rm(path, { force: true });
    }
  }

  /** Writes over a blob before it is deleted, as far as the disk does so; none is no error. */
  async wipeBlob(hash: Sha256): Promise<void> {
    mustBeHash(hash);
    const path = this.#path(hash);
    if (!(await this.hasBlob(hash))) return;
    try {
      await overwrite(path);
      await rm(path);
      await syncFolder(dirname(path));
    } catch (error) {
      throw asFileRefusal(error, path);
    }
  }

  /** The same bytes may come twice; the rename then puts like in the place of like. */
  async #settle(temporary: string, hash: Sha256): Promise<void> {
    const path = this.#path(hash);
    await makeFolder(dirname(path));
    await rename(temporary, path);
    await syncFolder(dirname(path));
  }

  #path(hash: Sha256): string {
    return join(this.#folder, hash.slice(0, 2), hash);
  }
}

/** No upload takes longer. */
const LONGEST_UPLOAD_MS = 24 * 3_600_000;

const isOld = (path: string): Promise<boolean> =>
  stat(path).then(
    ({ mtimeMs }) => Date.now() - mtimeMs > LONGEST_UPLOAD_MS,
    () => false,
  );

const ZEROS = new Uint8Array(65_536);

async function overwrite(path: string): Promise<void> {
  const file = await open(path, 'r+');
  try {
    for (let left = (await file.stat()).size; left > 0; left -= ZEROS.length)
      await writeAll(file, ZEROS.subarray(0, Math.min(left, ZEROS.length)));
    await file.sync();
  } finally {
    await file.close();
  }
}
