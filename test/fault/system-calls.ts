/** A call of a process to the kernel, as strace notes it, with the lines where it began and ended. */
export interface SystemCall {
  readonly name: string;
  /** Name, arguments and result as noted: `fsync(3</t/library.db-wal>) = 0`. */
  readonly text: string;
  readonly began: number;
  readonly ended: number;
}

/**
 * Runs a command under strace, which notes in `file` what is written, synced and renamed, by any
 * of its threads, with the paths behind the file numbers.
 */
export const traced = (strace: string, file: string): readonly string[] => [
  ...[strace, '-f', '--seccomp-bpf', '-y', '-s', '256', '-o', file],
  ...['-e', 'trace=fsync,fdatasync,write,writev,pwrite64,rename,renameat,renameat2'],
];

const LINE = /^(\d+)\s+(<\.\.\. \w+ resumed>)?(.*)$/;
const UNFINISHED = / *<unfinished \.\.\.>$/;

/**
 * Reads a trace: calls in the order in which they returned. A call that another thread's cut in
 * two is put together, and ends where it was resumed.
 */
export function readTrace(trace: string): readonly SystemCall[] {
  const calls: SystemCall[] = [];
  const open = new Map<string, Omit<SystemCall, 'ended'>>();
  for (const [at, line] of trace.split('\n').entries()) {
    const [, thread = '', resumed, rest = ''] = LINE.exec(line) ?? [];
    const before = resumed ? open.get(thread) : undefined;
    const text = (before?.text ?? '') + rest;
    const name = /^(\w+)\(/.exec(text)?.[1];
    if (name === undefined) continue;
    const call = { name, text: text.replace(UNFINISHED, ''), began: before?.began ?? at };
    if (UNFINISHED.test(text)) open.set(thread, call);
    else calls.push({ ...call, ended: at });
  }
  return calls;
}

const isWriteTo = (call: SystemCall, file: RegExp): boolean =>
  /^p?write/.test(call.name) && file.test(pathOf(call));
const isSyncOf = (call: SystemCall, file: RegExp): boolean =>
  /^f(data)?sync$/.test(call.name) && file.test(pathOf(call)) && / = 0$/.test(call.text);

/** Path behind the file number of a call: `fsync(30</tmp/x/library.db-wal>)`. */
const pathOf = (call: SystemCall): string => /^\w+\(\d+<([^>]*)>/.exec(call.text)?.[1] ?? '';

/** Calls whose written text shows an answer that goes out. */
export const answersIn = (calls: readonly SystemCall[], answer: RegExp): readonly SystemCall[] =>
  calls.filter((call) => /^write/.test(call.name) && answer.test(call.text));

/**
 * Answers that went out too early: since the answer before, nothing was written to `file`, or
 * not all of it had been synced when the answer began.
 */
export function unsyncedAnswers(
  calls: readonly SystemCall[],
  file: RegExp,
  answer: RegExp,
): readonly SystemCall[] {
  let after = -1;
  return answersIn(calls, answer).filter((sent) => {
    const between = calls.filter((call) => call.began > after && call.ended < sent.began);
    after = sent.ended;
    const written = between.filter((call) => isWriteTo(call, file)).at(-1);
    return !written || !between.some((c) => c.began > written.ended && isSyncOf(c, file));
  });
}
