import { basename } from 'node:path';
import type { BundleManifest } from '../../schema/index.ts';
import type { Arrived, Stage } from '../../store/index.ts';
import type { Id, Sha256 } from '../../study/index.ts';
import type { Library } from '../library.ts';
import { blobName } from './bundle-names.ts';
import { arrivalsIn, checkBundle } from './check-bundle.ts';
import { ZipSource } from './zip-source.ts';

export interface BundleImport {
  readonly study: Id;
  readonly title: string;
  /** In the bundle, and of them those that were not here before. */
  readonly changes: number;
  readonly added: number;
  readonly blobs: number;
  readonly addedBlobs: number;
  /** Blobs that the study names and that neither the bundle nor the library has. */
  readonly missing: readonly Sha256[];
}

/** Changes handed to the store at a time. */
const BATCH = 50;

/**
 * Brings a bundle in: a study that is new here comes as it was, one that is here already gets the
 * changes it lacks, whichever order they were made in. All of it is checked before anything is
 * written; the same bundle again changes nothing.
 * @throws RefusalError `bad-bundle`, `bad-change`; `conflict` when a change of the bundle has the
 * id or the count of another one that is here.
 */
export async function importBundle(
  library: Library,
  path: string,
  by: string,
  file = basename(path),
): Promise<BundleImport> {
  const zip = await ZipSource.open(path, file);
  try {
    const manifest = await checkBundle(zip, file);
    return await keep(library, zip, manifest, by, file);
  } finally {
    zip.close();
  }
}

/** Changes first, which may be refused; then blobs; then the commit of the changes. */
async function keep(
  library: Library,
  zip: ZipSource,
  manifest: BundleManifest,
  by: string,
  file: string,
): Promise<BundleImport> {
  const { study, title, changes, blobs } = manifest;
  const stage = await library.store.stage(study, by);
  try {
    for await (const batch of batches(arrivalsIn(zip, file))) await addBatch(stage, batch, by);
    const addedBlobs = await putBlobs(library, zip, manifest);
    const missing = await stillMissing(library, manifest.missing);
    const { added } = await stage.commit();
    const counts = { changes: changes.count, added, blobs: blobs.length, addedBlobs };
    return { study, title, ...counts, missing };
  } catch (error) {
    await stage.drop();
    throw error;
  }
}

/** Runs of changes by one author, for who brought them first is kept. */
async function* batches(arrivals: AsyncIterable<Arrived>): AsyncGenerator<readonly Arrived[]> {
  let batch: Arrived[] = [];
  for await (const arrived of arrivals) {
    const [first] = batch;
    if (batch.length >= BATCH || (first && handOf(first) !== handOf(arrived))) {
      yield batch;
      batch = [];
    }
    batch.push(arrived);
  }
  if (batch.length > 0) yield batch;
}

async function addBatch(stage: Stage, batch: readonly Arrived[], by: string): Promise<void> {
  const [first] = batch;
  if (!first) return;
  await stage.add(
    batch.map((a) => a.change),
    `${by} ← ${handOf(first)}`,
  );
}

/** Who brought a change, and on which day: what is known of its way here. */
const handOf = ({ author, received }: Arrived): string => `${author}, ${received.slice(0, 10)}`;

async function putBlobs(
  library: Library,
  zip: ZipSource,
  { blobs }: BundleManifest,
): Promise<number> {
  let added = 0;
  for (const { hash } of blobs) {
    if (await library.store.hasBlob(hash)) continue;
    await library.store.putBlob(zip.read(blobName(hash)));
    added += 1;
  }
  return added;
}

async function stillMissing(library: Library, named: readonly Sha256[]): Promise<Sha256[]> {
  const missing: Sha256[] = [];
  for (const hash of named) if (!(await library.store.hasBlob(hash))) missing.push(hash);
  return missing;
}
