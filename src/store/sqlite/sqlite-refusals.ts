import { RefusalError } from '../../study/index.ts';
import { diskFull, readOnly } from '../files.ts';
import { refusal } from '../refuse.ts';

/** Primary result codes (https://www.sqlite.org/rescode.html); extended ones have them as low byte. */
const BUSY = 5;
const LOCKED = 6;
const READONLY = 8;
const CORRUPT = 11;
const FULL = 13;
const CANTOPEN = 14;
const NOTADB = 26;
/** SQLITE_IOERR_SHMSIZE: no room to grow the log's index. */
const IOERR_SHMSIZE = 10 | (19 << 8);

/** What a caller can do something about becomes a refusal with the library's path; the rest stays as it is. */
export function asRefusal(error: unknown, file: string): unknown {
  if (error instanceof RefusalError) return error;
  const code = resultCode(error);
  if (code === IOERR_SHMSIZE) return diskFull(file);
  switch (code & 0xff) {
    case FULL:
      return diskFull(file);
    case READONLY:
    case CANTOPEN:
      return readOnly(file);
    case BUSY:
    case LOCKED:
      return held(file);
    case CORRUPT:
    case NOTADB:
      return damaged(file);
    default:
      return error;
  }
}

/** 0 when it is no error of the database. A file that can't be opened has its code in the text only. */
function resultCode(error: unknown): number {
  if (!(error instanceof Error)) return 0;
  if ('rawCode' in error && typeof error.rawCode === 'number') return error.rawCode;
  return Number(/Unable to open connection.*: (\d+)/.exec(error.message)?.[1] ?? 0);
}

const held = (file: string): RefusalError =>
  refusal(
    'busy',
    { file },
    'another program holds the library',
    'Nothing of this call was stored. Wait until it has ended, then try again.',
  );

export const damaged = (file: string): RefusalError =>
  refusal(
    'bad-value',
    { file },
    'the file is damaged, or is no library',
    'Nothing was changed. Keep the file, and open the latest backup in a folder of its own.',
  );
