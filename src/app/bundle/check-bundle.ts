import { createHash } from 'node:crypto';
import type { z } from 'zod';
import {
  BUNDLE_VERSION,
  type BundleManifest,
  bundleLine,
  bundleManifest,
  bundleVersion,
} from '../../schema/index.ts';
import type { Arrived } from '../../store/index.ts';
import { checkChange, type Place, RefusalError, type Sha256 } from '../../study/index.ts';
import { blobName, CHANGES, hashIn, MANIFEST } from './bundle-names.ts';
import { linesOf } from './lines.ts';
import { badZip, type ZipSource } from './zip-source.ts';

/** A change with a chunk of a wide table is some megabytes. */
const LONGEST_LINE = 64 * 2 ** 20;
const LONGEST_MANIFEST = 64 * 2 ** 20;

/**
 * Holds all of a bundle to what it says of itself: names, version, every change by its schema and
 * by what no change may carry, every digest. Nothing is kept of what it reads.
 * @throws RefusalError `bad-bundle`, `bad-change` and what else checkChange finds.
 */
export async function checkBundle(zip: ZipSource, file: string): Promise<BundleManifest> {
  checkNames(zip, file);
  const manifest = await readManifest(zip, file);
  checkFiles(zip, manifest, file);
  await checkChanges(zip, manifest, file);
  for (const { hash } of manifest.blobs) await checkBlob(zip, hash, file);
  return manifest;
}

function checkNames(zip: ZipSource, file: string): void {
  const known = (name: string) =>
    name === MANIFEST || name === CHANGES || hashIn(name) !== undefined;
  const other = zip.names.find((name) => !known(name));
  if (other !== undefined)
    throw badZip({ file }, 'it holds a file that is no part of a bundle', other);
}

async function readManifest(zip: ZipSource, file: string): Promise<BundleManifest> {
  const place = { file, column: MANIFEST };
  if ((zip.sizeOf(MANIFEST) ?? 0) > LONGEST_MANIFEST)
    throw badZip(place, 'its manifest is too long');
  const pieces: Uint8Array[] = [];
  for await (const chunk of zip.read(MANIFEST)) pieces.push(chunk);
  const json = parsed(Buffer.concat(pieces).toString('utf8'), place);
  const { data: version, error } = bundleVersion.safeParse(json);
  if (error) throw badZip(place, `it is no bundle of a study: ${firstIssue(error)}`);
  if (version.version !== BUNDLE_VERSION) throw otherVersion(place, version.version);
  const manifest = bundleManifest.safeParse(json);
  if (manifest.error)
    throw badZip(place, `its manifest does not fit: ${firstIssue(manifest.error)}`);
  return manifest.data;
}

const otherVersion = (place: Place, found: number): RefusalError =>
  new RefusalError({
    code: 'bad-bundle',
    place,
    value: String(found),
    why: `the bundle is of version ${found}, this program reads version ${BUNDLE_VERSION}`,
    next: 'Nothing was written. Open it with the version of the program that wrote it.',
  });

/** The files that are there are those that the manifest lists, with the sizes it gives. */
function checkFiles(zip: ZipSource, { blobs, changes }: BundleManifest, file: string): void {
  const stated = [
    ...blobs.map(({ hash, bytes }) => ({ name: blobName(hash), bytes })),
    { name: CHANGES, bytes: changes.bytes },
  ];
  for (const { name, bytes } of stated) {
    const found = zip.sizeOf(name);
    if (found === undefined) throw badZip({ file }, `the file ${name} is missing in it`, name);
    if (found !== bytes)
      throw badZip({ file, column: name }, `it has ${found} bytes, its manifest says ${bytes}`);
  }
  const names = new Set([MANIFEST, ...stated.map((s) => s.name)]);
  const other = zip.names.find((name) => !names.has(name));
  if (other !== undefined)
    throw badZip({ file }, 'it holds a blob that its manifest does not list', other);
}

async function checkChanges(zip: ZipSource, manifest: BundleManifest, file: string): Promise<void> {
  const hash = createHash('sha256');
  let row = 0;
  for await (const line of bundleLines(hashed(zip.read(CHANGES), hash), file)) {
    row += 1;
    checkLine(line, row, manifest, file);
  }
  const place = { file, column: CHANGES };
  if (row !== manifest.changes.count)
    throw badZip(place, `it has ${row} changes, its manifest says ${manifest.changes.count}`);
  if (hash.digest('hex') !== manifest.changes.sha256)
    throw badZip(place, 'its changes are not those that were bundled: their SHA-256 differs');
}

async function* hashed(
  chunks: AsyncIterable<Uint8Array>,
  hash: ReturnType<typeof createHash>,
): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) {
    hash.update(chunk);
    yield chunk;
  }
}

const bundleLines = (chunks: AsyncIterable<Uint8Array>, file: string): AsyncGenerator<string> =>
  linesOf(chunks, LONGEST_LINE, (row) =>
    badZip({ file, row, column: CHANGES }, 'a line of its changes is too long'),
  );

function checkLine(line: string, row: number, manifest: BundleManifest, file: string): void {
  const place = { file, row, column: CHANGES };
  const { data, error } = bundleLine.safeParse(parsed(line, place));
  if (error) throw badZip(place, `a change does not fit: ${firstIssue(error)}`);
  if (data.change.study !== manifest.study)
    throw badZip(place, 'a change belongs to another study than the bundle', data.change.study);
  const [first, ...more] = checkChange(data.change);
  if (first) throw new RefusalError(first, ...more);
}

function parsed(text: string, place: Place): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw badZip(place, `it is no JSON: ${error instanceof Error ? error.message : ''}`);
  }
}

function firstIssue(error: z.ZodError): string {
  const [issue] = error.issues;
  return `${issue?.path.join('.') ?? ''}: ${issue?.message ?? ''}`;
}

async function checkBlob(zip: ZipSource, hash: Sha256, file: string): Promise<void> {
  const digest = createHash('sha256');
  for await (const chunk of zip.read(blobName(hash))) digest.update(chunk);
  const found = digest.digest('hex');
  if (found !== hash)
    throw badZip(
      { file, column: blobName(hash) },
      'a blob was changed: its SHA-256 differs',
      found,
    );
}

/** The changes of a bundle that was checked, with their arrivals. */
export async function* arrivalsIn(zip: ZipSource, file: string): AsyncGenerator<Arrived> {
  for await (const line of bundleLines(zip.read(CHANGES), file)) yield JSON.parse(line);
}
