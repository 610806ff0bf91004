import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deviceOf, Library } from '../../src/app/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import type { Id } from '../../src/study/index.ts';

/** Libraries in folders of their own, for the time of a test. */
export class Libraries {
  readonly #open: Library[] = [];

  private constructor(readonly dir: string) {}

  static async start(): Promise<Libraries> {
    return new Libraries(await mkdtemp(join(tmpdir(), 'hoistside-app-')));
  }

  path(name: string): string {
    return join(this.dir, name);
  }

  /** Opens the library of this name, making it when there is none. */
  async open(name: string): Promise<Library> {
    const dir = this.path(name);
    await mkdir(dir, { recursive: true });
    const library = new Library(await openSqliteStore(dir), dir, await deviceOf(dir));
    this.#open.push(library);
    return library;
  }

  async close(library: Library): Promise<void> {
    this.#open.splice(this.#open.indexOf(library), 1);
    await library.close();
  }

  async end(): Promise<void> {
    for (const library of this.#open) await library.close();
    await rm(this.dir, { recursive: true });
  }
}

/** Every change of a study with its place of arrival, in that order. */
export async function changesIn(library: Library, study: Id) {
  const { changes } = await library.store.since(study, 0, 100_000);
  return changes.map((a) => a.change);
}

export async function blobIn(library: Library, hash: string): Promise<Buffer> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of library.store.getBlob(hash)) chunks.push(chunk);
  return Buffer.concat(chunks);
}
