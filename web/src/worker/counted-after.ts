import { type Change, changesOf, type Id, type StudyView } from '../../../src/study/index.ts';

/** Changes not sent yet, each counted on from what is known of its device. */
export function countedAfter(view: StudyView, waiting: readonly Change[]): Change[] {
  const last = new Map<Id, number>();
  for (const { device, seq } of changesOf(view))
    last.set(device, Math.max(last.get(device) ?? 0, seq));
  return waiting.map((change) => {
    const seq = (last.get(change.device) ?? 0) + 1;
    last.set(change.device, seq);
    return { ...change, seq };
  });
}
