import { REFUSALS, type Refusal, RefusalError, refusalText } from '../study/index.ts';

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

/** Prints an error as it is asked for, and gives its exit code. */
export function printError(error: unknown, io: Io, json: boolean): number {
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
