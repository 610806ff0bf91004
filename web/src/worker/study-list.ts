import type { StudyHead } from '../../../src/store/port.ts';
import type { Id } from '../../../src/study/index.ts';
import type { Api } from './api.ts';
import type { DeviceCopy } from './device-copy.ts';
import { whatPasses } from './passing.ts';

/** A study, and what this device has of it. */
export interface ListedStudy extends StudyHead {
  readonly isCopied: boolean;
  /** Changes made here that the server has not acknowledged. */
  readonly waiting: number;
}

export interface StudyList {
  readonly studies: readonly ListedStudy[];
  /** Why these are the studies of this device alone. */
  readonly unreachable?: string;
}

/** The library's studies, and those that only this device has: of another library, or purged. */
export async function studyList(api: Api, copy: DeviceCopy): Promise<StudyList> {
  const copied = await copy.heads();
  const { heads, unreachable } = await served(api, copied.length > 0);
  const known = new Set(heads.map((head) => head.study));
  const all = [...heads, ...copied.filter((head) => !known.has(head.study))];
  const studies = await Promise.all(
    all.map(async (head): Promise<ListedStudy> => {
      const isCopied = copied.some((c) => c.study === head.study);
      return { ...head, isCopied, waiting: await waitingOf(head.study, copy) };
    }),
  );
  return { studies, ...(unreachable === undefined ? {} : { unreachable }) };
}

const waitingOf = async (study: Id, { outbox }: DeviceCopy): Promise<number> =>
  (await outbox.of(study)).length;

/** @throws RefusalError, Unreachable where this device has no copy to show instead. */
async function served(
  api: Api,
  hasCopies: boolean,
): Promise<{ readonly heads: readonly StudyHead[]; readonly unreachable?: string }> {
  try {
    return { heads: (await api.studies()).studies };
  } catch (error) {
    const passing = whatPasses(error);
    if (passing === undefined || !hasCopies) throw error;
    return { heads: [], unreachable: passing };
  }
}
