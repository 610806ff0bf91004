/**
 * capture: everything that comes in from outside by file.
 *
 * Tables of parts, joints, bags, precedence, assemblies, modules, removals, readings, claims and element times go
 * from detection over a preview, in which every guess is shown, to entries, all or nothing;
 * photographs are accepted by their bytes; rate books are checked cell by cell.
 * Depends on study and quantity. Stays away from storage, calculation and hosts: files are
 * handed in as streams of bytes, so that the same code runs in a browser and on a server.
 */
export { DELIMITER_WORDS, DELIMITERS, type Delimiter, type Guess } from './detect.ts';
export { hasRequired } from './headings.ts';
export { importTable, previewTable, type TableImport } from './import-table.ts';
export { type ColumnGuess, type Overrides, SKIP } from './mapping.ts';
export {
  type PhotoItem,
  type PhotoToKeep,
  photoEntry,
  photoMediaType,
  readPhotoList,
} from './photographs.ts';
export { type PictureScale, pictureLength } from './pictures/picture-length.ts';
export { type CameraNotes, readExif } from './pictures/read-exif.ts';
export { withoutPlace } from './pictures/without-place.ts';
export {
  type Assumption,
  PREVIEW_ROWS,
  type Preview,
  type PreviewCell,
  type PreviewRow,
} from './preview.ts';
export { MOST_PROBLEMS } from './problems.ts';
export { readRateBook } from './read-rate-book.ts';
export { FIELDS, type FieldDef, isTableForm, TABLE_FORMS, type TableForm } from './table-forms.ts';
export type { TableProgress, TableRequest } from './table-request.ts';
export type { Chunk, Open } from './text-source.ts';
export {
  isWorkbook,
  readWorkbook,
  type SheetChoice,
  type SheetTable,
} from './workbook/read-workbook.ts';
