import {
  type Entry,
  type Id,
  type Reading,
  RefusalError,
  type Sha256,
  type StudyView,
} from '../study/index.ts';
import { guessDelimiter, headRows } from './detect.ts';
import { fileKindOf, firstBytes } from './file-kinds.ts';
import { LOCAL_TIME, type RowText, rowTexts } from './form-reader.ts';
import { isKnownHeading } from './headings.ts';
import { mapColumns } from './mapping.ts';
import { Problems } from './problems.ts';
import { isBlank } from './table-rows.ts';
import type { Head } from './text-source.ts';

/** A picture that a list names. */
export interface PhotoItem {
  /** Path of the picture as the list has it, beside the list. */
  readonly file: string;
  readonly subject: Id | null;
  readonly caption: string;
  readonly takenAt: Reading['takenAt'];
}

/** A picture to be kept with a study, its bytes being in the blobs already. */
export interface PhotoToKeep extends PhotoItem {
  readonly id: Id;
  readonly hash: Sha256;
  /** The picture's first bytes, or all of them. */
  readonly head: Uint8Array;
}

const PICTURES: ReadonlySet<string> = new Set(['image/png', 'image/jpeg']);

/**
 * Media type of a picture by its first bytes, whatever its name says.
 * @throws RefusalError for anything but PNG and JPEG: drawings and pages that can hold scripts,
 *   and formats that not every browser shows.
 */
export function photoMediaType(head: Uint8Array, file: string): string {
  const kind = fileKindOf(head);
  if (kind && PICTURES.has(kind.mediaType)) return kind.mediaType;
  throw new RefusalError({
    code: 'bad-value',
    place: { file, row: 1, column: 'first bytes' },
    value: firstBytes(head),
    why: kind ? `the file is ${kind.words}` : 'the file is no PNG or JPEG picture',
    next: 'Save the photograph as JPEG or PNG and hand in that file.',
  });
}

/** @throws RefusalError when the bytes are no PNG or JPEG. */
export const photoEntry = (photo: PhotoToKeep): Entry => ({
  v: 1,
  e: 'photo.add',
  photo: {
    id: photo.id,
    blob: photo.hash,
    mediaType: photoMediaType(photo.head, photo.file),
    subject: photo.subject,
    caption: photo.caption,
    takenAt: photo.takenAt,
  },
});

/**
 * Reads a list of photographs: file, subject, caption and time of each.
 * @throws RefusalError with every problem of the list.
 */
export function readPhotoList(text: string, file: string, view: StudyView): PhotoItem[] {
  const problems = new Problems(file);
  const plain = text.replace(/^\ufeff/, '');
  const head: Head = {
    encoding: 'utf-8',
    encodingWhy: '',
    text: plain,
    whole: true,
    newline: '\n',
  };
  const delimiter = guessDelimiter(head, (h) => isKnownHeading('photographs', h)).value;
  const [headings = [], ...rows] = headRows(head, delimiter, Number.POSITIVE_INFINITY);
  const texts = rowTexts(mapColumns('photographs', headings, {}, problems));
  problems.throwIfAny();
  const items = rows.flatMap((cells, i) => {
    if (isBlank(cells)) return [];
    const row = texts(cells, i + 2);
    const problem = cells.length === headings.length ? wrongItem(row, view) : ragged(row);
    if (problem) problems.add(problem);
    return problem ? [] : [itemOf(row, view)];
  });
  problems.throwIfAny();
  return items;
}

const ragged = (row: RowText) =>
  row.problem('file', 'the row has more or fewer cells than headings', 'Correct the row.');

/** A path that leaves the folder of the list is not followed. */
const LEAVES_FOLDER = /^([\\/]|[A-Za-z]:)|(^|[\\/])\.\.([\\/]|$)/;

function wrongItem(row: RowText, view: StudyView) {
  const [file, subject] = [row.text('file'), row.text('subject')];
  if (file === '') return row.problem('file', 'the row names no picture', 'Name its file.');
  if (LEAVES_FOLDER.test(file))
    return row.problem(
      'file',
      'the picture is not beside the list',
      'Put it in the same folder or below.',
    );
  if (subject !== '' && !view.find(subject))
    return row.problem('subject', `there is no ${subject} in the study`, 'Correct the number.');
  if (!LOCAL_TIME.test(row.text('at')))
    return row.problem('at', 'the time can not be read', 'Write it as 2026-10-05T10:42.');
  return undefined;
}

const itemOf = (row: RowText, view: StudyView): PhotoItem => ({
  file: row.text('file'),
  subject: view.find(row.text('subject'))?.id ?? null,
  caption: row.text('caption'),
  takenAt: { local: row.text('at') },
});
