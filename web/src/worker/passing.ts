import { type RefusalCode, RefusalError } from '../../../src/study/index.ts';
import { Unreachable } from './api.ts';

/** Refusals that are about the server's state, not about what was sent: it may be sent again. */
const PASSING: readonly RefusalCode[] = ['busy', 'not-signed-in', 'read-only', 'disk-full'];

/** What keeps the server from answering now, in words; undefined when it is something else. */
export function whatPasses(error: unknown): string | undefined {
  if (error instanceof Unreachable) return `${error.message}; it is tried again every few seconds.`;
  if (!(error instanceof RefusalError)) return undefined;
  const [{ code, why, next }] = error.refusals;
  return PASSING.includes(code) ? `${why}. ${next}` : undefined;
}

/** That the server refuses what was sent to it, whenever it is sent. */
export const isRefused = (error: unknown): error is RefusalError =>
  error instanceof RefusalError && whatPasses(error) === undefined;
