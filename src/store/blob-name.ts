import type { Sha256 } from '../study/index.ts';
import { refusal } from './refuse.ts';

export const blobNotFound = (where: string, hash: Sha256) =>
  refusal(
    'not-found',
    { file: where },
    'no blob of this hash is in the library',
    'Bring in the study bundle or the device that holds it.',
    hash,
  );

/** @throws RefusalError `bad-call`. */
export function mustBeHash(hash: string): void {
  if (/^[0-9a-f]{64}$/.test(hash)) return;
  const why = 'a blob is named by 64 lower-case hex digits, its SHA-256';
  throw refusal('bad-call', {}, why, 'Take the name from the study.', hash);
}
