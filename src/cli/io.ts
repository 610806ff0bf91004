import {
  REFUSALS,
  type Refusal,
  type RefusalCode,
  RefusalError,
  refusalText,
} from '../study/index.ts';

/** Where a command writes, so that tests can read it. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** A line that may be written over by the next one, where the terminal can. */
  readonly progress: (text: string) => void;
}

export const PROCESS_IO: Io = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  progress: (text) => {
    if (process.stderr.isTTY) process.stderr.write(`\r\u001b[2K${text}`);
    else process.stderr.write(`${text}\n`);
  },
};

/** Exit code of a defect: ours, not the caller's. */
const DEFECT_EXIT = 70;

/** What the file system says, as a refusal: the path is the caller's to mend. */
const FILE_ERRORS: Readonly<Record<string, { code: RefusalCode; why: string; next: string }>> = {
  ENOENT: { code: 'not-found', why: 'there is no such file or folder', next: 'Check the path.' },
  ENOTDIR: {
    code: 'bad-call',
    why: 'a file stands where a folder should be',
    next: 'Name another folder.',
  },
  EISDIR: {
    code: 'bad-call',
    why: 'a folder stands where a file should be',
    next: 'Name a file in it.',
  },
  EEXIST: { code: 'conflict', why: 'it is there already', next: 'Name another one.' },
  EACCES: {
    code: 'not-allowed',
    why: 'you may not read or write it',
    next: 'Ask whoever may, or name another path.',
  },
  EROFS: {
    code: 'read-only',
    why: 'it can be read only',
    next: 'Name a path that can be written.',
  },
  ENOSPC: {
    code: 'disk-full',
    why: 'the disk is full',
    next: 'Make room and run the command again.',
  },
};

function asRefusal(error: unknown): unknown {
  if (!(error instanceof Error) || !('code' in error) || !('path' in error)) return error;
  const known = FILE_ERRORS[String(error.code)];
  const file = String(error.path);
  return known ? new RefusalError({ ...known, place: { file }, value: file }) : error;
}

/** Prints an error as it is asked for, and gives its exit code. */
export function printError(thrown: unknown, io: Io, json: boolean): number {
  const error = asRefusal(thrown);
  if (error instanceof RefusalError) {
    if (json) io.out(`${JSON.stringify({ refusals: error.refusals })}\n`);
    else for (const refusal of error.refusals) io.err(refusalLine(refusal));
    return REFUSALS[error.refusals[0].code].exit;
  }
  const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
  if (json) io.out(`${JSON.stringify({ defect: words })}\n`);
  else
    io.err(
      `This is a defect of the program, not of your input; nothing was half-written.\n${words}\n`,
    );
  return DEFECT_EXIT;
}

const refusalLine = (refusal: Refusal): string => `refused: ${refusalText(refusal)}\n`;
