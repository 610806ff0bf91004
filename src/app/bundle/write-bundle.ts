import { createHash } from 'node:crypto';
import { Readable } from 'node:stream';
import { ZipFile } from 'yazl';
import { BUNDLE_VERSION, type BundleManifest } from '../../schema/index.ts';
import type { StudyHead } from '../../store/index.ts';
import { blobsOf, canonicalText, type Sha256 } from '../../study/index.ts';
import type { Library } from '../library.ts';
import { VERSION } from '../version.ts';
import { blobName, CHANGES, MANIFEST } from './bundle-names.ts';

/** Changes read from the store at a time. */
const PAGE = 200;

/**
 * A study as a bundle, written while it is read: its changes as they stand when this is called,
 * with author and time of arrival, and the blobs that they name. What goes wrong on the way
 * destroys the stream, so that no reader takes half a bundle for a whole one.
 */
export function writeBundle(library: Library, head: StudyHead): Readable {
  const writer = new BundleWriter(library, head);
  return writer.output;
}

class BundleWriter {
  readonly #library: Library;
  readonly #head: StudyHead;
  readonly #zip = new ZipFile();
  readonly #made = new Date();
  readonly #named = new Set<Sha256>();
  readonly #blobs: BundleManifest['blobs'] = [];
  readonly #missing: Sha256[] = [];
  readonly output: Readable;
  #source: Readable | undefined;

  constructor(library: Library, head: StudyHead) {
    this.#library = library;
    this.#head = head;
    this.output = new Readable().wrap(this.#zip.outputStream);
    this.#zip.on('error', (error) => this.output.destroy(error));
    this.output.on('close', () => this.#source?.destroy());
    this.#add(CHANGES, true, () => this.#changes());
  }

  /** Entries are opened one after the other, each when the one before has been written. */
  #add(name: string, compress: boolean, bytes: () => AsyncIterable<Uint8Array>): void {
    this.#zip.addReadStreamLazy(name, { mtime: this.#made, compress }, (done) => {
      this.#source = Readable.from(bytes());
      done(null, this.#source);
    });
  }

  async *#changes(): AsyncGenerator<Uint8Array> {
    const hash = createHash('sha256');
    const sum = { count: 0, bytes: 0 };
    for await (const line of this.#lines()) {
      sum.count += 1;
      sum.bytes += line.length;
      hash.update(line);
      yield line;
    }
    const changes = { ...sum, sha256: hash.digest('hex') };
    for (const blob of [...this.#named].sort()) await this.#addBlob(blob);
    this.#add(MANIFEST, true, () => this.#manifest(changes));
    this.#zip.end();
  }

  async *#lines(): AsyncGenerator<Uint8Array> {
    const { study, changes: last } = this.#head;
    for (let cursor = 0; cursor < last; ) {
      const limit = Math.min(PAGE, last - cursor);
      const page = await this.#library.store.since(study, cursor, limit);
      if (page.changes.length === 0) return;
      for (const arrived of page.changes) {
        for (const hash of blobsOf(arrived.change)) this.#named.add(hash);
        yield Buffer.from(`${canonicalText(arrived)}\n`);
      }
      cursor = page.next;
    }
  }

  /** A blob may still be on its way from the device that took it. */
  async #addBlob(hash: Sha256): Promise<void> {
    if (await this.#library.store.hasBlob(hash))
      this.#add(blobName(hash), false, () => this.#blob(hash));
    else this.#missing.push(hash);
  }

  async *#blob(hash: Sha256): AsyncGenerator<Uint8Array> {
    const digest = createHash('sha256');
    let bytes = 0;
    for await (const chunk of this.#library.store.getBlob(hash)) {
      digest.update(chunk);
      bytes += chunk.length;
      yield chunk;
    }
    if (digest.digest('hex') !== hash) throw new TypeError(`the bytes of blob ${hash} are damaged`);
    this.#blobs.push({ hash, bytes });
  }

  async *#manifest(changes: BundleManifest['changes']): AsyncGenerator<Uint8Array> {
    const { study, title } = this.#head;
    const manifest: BundleManifest = {
      ...{ format: 'hoistside-bundle', version: BUNDLE_VERSION, study, title, program: VERSION },
      ...{ made: this.#made.toISOString(), changes, blobs: this.#blobs, missing: this.#missing },
    };
    yield Buffer.from(`${JSON.stringify(manifest, undefined, 2)}\n`);
  }
}
