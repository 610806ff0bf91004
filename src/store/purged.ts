import type { Id, RefusalError } from '../study/index.ts';
import { refusal } from './refuse.ts';

/** A study that was taken out for good does not come back by a device that still has it. */
export const isPurged = (study: Id, when: string): RefusalError =>
  refusal(
    'not-allowed',
    { study },
    `the study was purged from this library on ${when.slice(0, 10)}`,
    'Nothing was stored. Delete it on the device too; a bundle of it can be opened in another library.',
    study,
  );
