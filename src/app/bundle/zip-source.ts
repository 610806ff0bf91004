import { stat } from 'node:fs/promises';
import { type Entry, openPromise, type ZipFile } from 'yauzl';
import { type Place, RefusalError } from '../../study/index.ts';

/** How much a zip may unpack to: what it holds is read from its own list before anything else. */
export interface ZipLimits {
  readonly entries: number;
  /** All entries together, unpacked. */
  readonly bytes: number;
  /** Unpacked over packed, of the whole file; plain record text packs by some ten. */
  readonly ratio: number;
}

export const ZIP_LIMITS: ZipLimits = { entries: 200_000, bytes: 64 * 2 ** 30, ratio: 200 };
/** Below this the ratio tells nothing. */
const SMALL = 2 ** 20;

/** The entries of a zip on disk, listed and held to limits; each is unpacked when it is read. */
export class ZipSource {
  readonly #zip: ZipFile;
  readonly #entries: ReadonlyMap<string, Entry>;
  readonly #place: Place;

  private constructor(zip: ZipFile, entries: ReadonlyMap<string, Entry>, place: Place) {
    this.#zip = zip;
    this.#entries = entries;
    this.#place = place;
  }

  /** @throws RefusalError `bad-bundle` for what is no whole zip, holds unsafe names or unpacks to too much. */
  static async open(path: string, file: string, limits = ZIP_LIMITS): Promise<ZipSource> {
    const place = { file };
    const { size } = await stat(path);
    const options = { lazyEntries: true, autoClose: false, strictFileNames: true };
    const zip = await inZip(place, () => openPromise(path, options));
    try {
      return new ZipSource(zip, await listed(zip, size, place, limits), place);
    } catch (error) {
      zip.close();
      throw error;
    }
  }

  get names(): readonly string[] {
    return [...this.#entries.keys()];
  }

  /** Unpacked size as the zip states it, which reading holds it to; undefined when it is not there. */
  sizeOf(name: string): number | undefined {
    return this.#entries.get(name)?.uncompressedSize;
  }

  /** @throws RefusalError `bad-bundle` when it is not there or can't be unpacked. */
  async *read(name: string): AsyncGenerator<Uint8Array> {
    const entry = this.#entries.get(name);
    if (!entry) throw badZip(this.#place, `the file ${name} is missing in it`, name);
    const stream = await inZip(this.#place, () => this.#zip.openReadStreamPromise(entry), name);
    try {
      yield* stream;
    } catch (error) {
      throw badZip(this.#place, `${name} can not be unpacked: ${wordsOf(error)}`, name);
    } finally {
      stream.destroy();
    }
  }

  close(): void {
    this.#zip.close();
  }
}

async function listed(
  zip: ZipFile,
  size: number,
  place: Place,
  limits: ZipLimits,
): Promise<Map<string, Entry>> {
  if (zip.entryCount > limits.entries)
    throw badZip(place, `it holds more than ${limits.entries} files`, String(zip.entryCount));
  const entries = new Map<string, Entry>();
  await inZip(place, async () => {
    for await (const entry of zip.eachEntry()) {
      const { fileName } = entry;
      if (entries.has(fileName)) throw badZip(place, 'it holds two files of one name', fileName);
      if (entry.isEncrypted()) throw badZip(place, 'it is encrypted', fileName);
      entries.set(fileName, entry);
    }
  });
  const unpacked = [...entries.values()].reduce((sum, e) => sum + e.uncompressedSize, 0);
  if (unpacked > limits.bytes || unpacked > SMALL + size * limits.ratio)
    throw badZip(place, `its ${size} bytes would unpack to ${unpacked}`, `${unpacked} bytes`);
  return entries;
}

/** What the reader of zips finds wrong is a refusal: it comes from the file. */
async function inZip<T>(place: Place, work: () => Promise<T>, value?: string): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof RefusalError) throw error;
    throw badZip(place, `it is no whole zip file: ${wordsOf(error)}`, value);
  }
}

const wordsOf = (error: unknown): string => (error instanceof Error ? error.message : `${error}`);

export const badZip = (place: Place, why: string, value?: string): RefusalError =>
  new RefusalError({
    code: 'bad-bundle',
    place,
    ...(value === undefined ? {} : { value }),
    why,
    next: 'Nothing was written. Fetch the file again from where it was made; do not unpack and pack it by hand.',
  });
