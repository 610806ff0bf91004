import { photoEntry, photoMediaType } from '../../../src/capture/index.ts';
import type { Store } from '../../../src/store/port.ts';
import {
  type Entry,
  type Id,
  type Photo,
  type Reading,
  RefusalError,
  type Sha256,
  type StudyView,
} from '../../../src/study/index.ts';
import type { Api } from './api.ts';

/** As large as the server takes. */
const LIMIT = 50 * 2 ** 20;

export interface PhotoTyped {
  readonly file: File;
  readonly subject: Id;
  readonly caption: string;
}

/** Where a photograph is, and what its file says of its time. */
export interface PhotoContext {
  readonly id: Id;
  readonly takenAt: Reading['takenAt'];
}

/**
 * Keeps the bytes on this device and says what the record gets. The device has them before the
 * record names them.
 * @throws RefusalError for what is no PNG or JPEG by its bytes, is too large, or has no room here.
 */
export async function keepPhoto(
  { file, subject, caption }: PhotoTyped,
  { id, takenAt }: PhotoContext,
  store: Store,
): Promise<Entry> {
  if (file.size > LIMIT) throw tooLarge(file);
  const head = new Uint8Array(await file.arrayBuffer());
  photoMediaType(head, file.name);
  const hash = await store.putBlob([head]);
  return photoEntry({ id, hash, head, file: file.name, subject, caption, takenAt });
}

const tooLarge = ({ name, size }: File): RefusalError =>
  new RefusalError({
    code: 'too-large',
    place: { file: name },
    value: `${size} bytes`,
    why: `a photograph of more than ${LIMIT / 2 ** 20} MB is not taken`,
    next: 'Save it smaller, as JPEG, and hand in that file.',
  });

/** Photographs of a node; the root has those of the vehicle as a whole as well. */
export const photosOf = (view: StudyView, subject: Id): readonly Photo[] =>
  view
    .photos()
    .filter((p) => p.subject === subject || (p.subject === null && subject === view.root()?.id));

/**
 * A photograph from this device, else from the server, and then it is kept here. Its kind is told
 * by its bytes, whatever the record says of it: nothing else is ever shown.
 * @throws RefusalError for anything but PNG and JPEG, Unreachable.
 */
export async function photoBytes(hash: Sha256, store: Store, api: Api): Promise<Blob> {
  const bytes = (await store.hasBlob(hash))
    ? await kept(hash, store)
    : await fetched(hash, store, api);
  return new Blob([bytes], { type: photoMediaType(bytes, hash) });
}

async function kept(hash: Sha256, store: Store): Promise<Uint8Array<ArrayBuffer>> {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for await (const piece of store.getBlob(hash)) pieces.push(piece.slice());
  return new Uint8Array(await new Blob(pieces).arrayBuffer());
}

/** Shown even where this device has no room for it. */
async function fetched(hash: Sha256, store: Store, api: Api): Promise<Uint8Array<ArrayBuffer>> {
  const file = await api.file(`/api/blobs/${hash}`);
  const bytes = new Uint8Array(await file.arrayBuffer());
  await store.putBlob([bytes]).catch(() => undefined);
  return bytes;
}
