/** What a file seems to be by its first bytes. */
export interface FileKind {
  readonly words: string;
  readonly mediaType: string;
}

interface Signature extends FileKind {
  readonly bytes: readonly number[];
}

const ascii = (text: string): number[] => [...text].map((c) => c.charCodeAt(0));

const SIGNATURES: readonly Signature[] = [
  {
    words: 'a PNG picture',
    mediaType: 'image/png',
    bytes: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
  },
  { words: 'a JPEG picture', mediaType: 'image/jpeg', bytes: [0xff, 0xd8, 0xff] },
  { words: 'a GIF picture', mediaType: 'image/gif', bytes: ascii('GIF8') },
  { words: 'a PDF document', mediaType: 'application/pdf', bytes: ascii('%PDF-') },
  {
    words: 'a ZIP archive or a spreadsheet workbook',
    mediaType: 'application/zip',
    bytes: [0x50, 0x4b, 0x03, 0x04],
  },
  { words: 'a gzip archive', mediaType: 'application/gzip', bytes: [0x1f, 0x8b] },
  {
    words: 'an old binary workbook or document',
    mediaType: 'application/octet-stream',
    bytes: [0xd0, 0xcf, 0x11, 0xe0],
  },
  { words: 'an SQLite database', mediaType: 'application/vnd.sqlite3', bytes: ascii('SQLite f') },
];

/** The kind of a file by the signature at its start; undefined when it is none of the table. */
export const fileKindOf = (head: Uint8Array): FileKind | undefined =>
  SIGNATURES.find((s) => s.bytes.every((byte, i) => head[i] === byte));

/** The first bytes as people print them: `89 50 4E 47`. */
export const firstBytes = (head: Uint8Array): string =>
  [...head.subarray(0, 8)].map((b) => b.toString(16).padStart(2, '0').toUpperCase()).join(' ');
