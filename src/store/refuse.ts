import { type Place, type RefusalCode, RefusalError } from '../study/index.ts';

/** A refusal of one thing: where it is, why it can't be done, and what to do next. */
export function refusal(
  code: RefusalCode,
  place: Place,
  why: string,
  next: string,
  value?: string,
): RefusalError {
  return new RefusalError({ code, place, why, next, ...(value === undefined ? {} : { value }) });
}

/** Another writer held the library for longer than this one was ready to wait. */
export const busy = (where: string, waitedMs: number): RefusalError =>
  refusal(
    'busy',
    { file: where },
    `another writer has held the library for ${waitedMs} ms`,
    'Nothing was stored. Wait until the other import or program has ended, then try again.',
  );
