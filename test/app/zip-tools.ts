import { readFile, writeFile } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { fromBufferPromise } from 'yauzl';
import { ZipFile } from 'yazl';

/** What a zip holds, by name. */
export type Packed = Map<string, Buffer>;

export async function unpack(path: string): Promise<Packed> {
  const zip = await fromBufferPromise(await readFile(path), { lazyEntries: true });
  const files: Packed = new Map();
  for await (const entry of zip.eachEntry())
    files.set(entry.fileName, await buffer(await zip.openReadStreamPromise(entry)));
  return files;
}

export async function pack(
  files: Iterable<readonly [string, Buffer]>,
  path: string,
): Promise<void> {
  const zip = new ZipFile();
  for (const [name, bytes] of files) zip.addBuffer(bytes, name);
  zip.end();
  await writeFile(path, await buffer(zip.outputStream));
}

/** Puts one name in the place of another of the same length, wherever a zip has it. */
export async function rename(path: string, from: string, to: string): Promise<void> {
  const bytes = await readFile(path);
  for (let at = bytes.indexOf(from); at >= 0; at = bytes.indexOf(from, at + 1)) bytes.write(to, at);
  await writeFile(path, bytes);
}
