import { createReadStream } from 'node:fs';
import { mkdir, open, readdir, writeFile } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import { photoEntry, readExif, withoutPlace } from '../capture/index.ts';
import { addSeconds } from '../speech/index.ts';
import { type Entry, type Id, RefusalError, type Sha256, type StudyView } from '../study/index.ts';
import type { Library } from './library.ts';

export interface PhotographsRequest {
  readonly dir: string;
  readonly by: string;
  /** Seconds to add to the camera's clock, from one event that both saw. */
  readonly clockOffsetS?: number;
  readonly progress?: (done: number, of: number) => void;
}

export interface PhotographsKept {
  readonly kept: number;
  /** Files whose very bytes are in the study already, or came twice. */
  readonly duplicates: readonly string[];
  /** Photographs that found a part by their time. */
  readonly tied: number;
  /** Files without a time of their own: kept with the time of none. */
  readonly untimed: readonly string[];
}

const ENDINGS: ReadonlySet<string> = new Set(['.jpg', '.jpeg', '.png']);
/** Camera's notes stand in the first bytes. */
const HEAD_BYTES = 256 * 1024;
/** A photograph belongs to what was spoken of no longer before it. */
const IN_HAND_S = 120;

/**
 * Keeps every photograph of a folder: its bytes as they are, streamed, so that their number costs
 * no memory; its time by the camera's clock and the offset; and the part in hand then, by the
 * drafts and marks of the walkaround. One gesture for all.
 * @throws RefusalError when the folder has no photographs, or a file is none.
 */
export async function importPhotographs(
  library: Library,
  study: Id,
  request: PhotographsRequest,
): Promise<PhotographsKept> {
  const files = (await readdir(request.dir))
    .filter((f) => ENDINGS.has(extname(f).toLowerCase()))
    .sort();
  if (files.length === 0) throw noneThere(request.dir);
  const view = await library.view(study);
  const known = new Set<Sha256>(view.photos().map((p) => p.blob));
  const moments = momentsOf(view);
  const entries: Entry[] = [];
  const [duplicates, untimed]: [string[], string[]] = [[], []];
  let tied = 0;
  for (const [i, file] of files.entries()) {
    const path = join(request.dir, file);
    const head = await headOf(path);
    const hash = await library.store.putBlob(createReadStream(path));
    if (known.has(hash)) duplicates.push(file);
    else {
      known.add(hash);
      const { takenAt, zone } = readExif(head);
      const local = takenAt === undefined ? '' : addSeconds(takenAt, request.clockOffsetS ?? 0);
      if (local === '') untimed.push(file);
      const subject = local === '' ? null : inHand(moments, local);
      if (subject !== null) tied++;
      const at = { local, ...(zone === undefined ? {} : { zone }) };
      entries.push(
        photoEntry({
          id: library.newStudy(),
          file,
          subject,
          caption: basename(file, extname(file)),
          takenAt: at,
          hash,
          head,
        }),
      );
    }
    request.progress?.(i + 1, files.length);
  }
  if (entries.length > 0)
    await library.record(study, request.by, `${entries.length} photographs`, entries);
  return { kept: entries.length, duplicates, tied, untimed };
}

async function headOf(path: string): Promise<Uint8Array> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}

interface Moment {
  readonly local: string;
  readonly part: Id;
}

/** When which part was spoken of or marked, in order of time. */
function momentsOf(view: StudyView): Moment[] {
  const spoken = view
    .speeches()
    .flatMap(({ id, startedAt }) =>
      view
        .drafts(id)
        .flatMap(({ draft }) =>
          draft.about[0] === undefined
            ? []
            : [{ local: addSeconds(startedAt.local, draft.fromS), part: draft.about[0] }],
        ),
    );
  const marked = view
    .marks()
    .flatMap(({ at, about }) => (about === null ? [] : [{ local: at.local, part: about }]));
  return [...spoken, ...marked].sort((a, b) =>
    a.local < b.local ? -1 : a.local > b.local ? 1 : 0,
  );
}

function inHand(moments: readonly Moment[], local: string): Id | null {
  const last = moments.filter((m) => m.local <= local).at(-1);
  return last && addSeconds(last.local, IN_HAND_S) >= local ? last.part : null;
}

const noneThere = (dir: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { file: dir },
    value: dir,
    why: 'no photographs are in this folder',
    next: 'Name a folder with JPEG or PNG files.',
  });

/** Writes the photographs of a study for others: without place, camera or owner. Returns how many. */
export async function exportPhotographs(library: Library, study: Id, dir: string): Promise<number> {
  const photos = (await library.view(study)).photos();
  await mkdir(dir, { recursive: true });
  for (const [i, { blob, caption, mediaType }] of photos.entries()) {
    const chunks: Uint8Array[] = [];
    for await (const chunk of library.store.getBlob(blob)) chunks.push(chunk);
    const name = `${String(i + 1).padStart(4, '0')}-${caption.replace(/[^\w.-]+/g, '-').slice(0, 60)}`;
    const ending = mediaType === 'image/png' ? 'png' : 'jpg';
    await writeFile(join(dir, `${name}.${ending}`), withoutPlace(Buffer.concat(chunks)), {
      flag: 'wx',
    });
  }
  return photos.length;
}
