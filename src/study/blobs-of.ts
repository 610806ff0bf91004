import type { Change } from './change.ts';
import type { Entry } from './entries.ts';
import type { Sha256 } from './ids.ts';

/** Every blob that a change names: photographs, evidence, and values that are one. */
export const blobsOf = (change: Change): Sha256[] => change.entries.flatMap(blobsIn);

function blobsIn(entry: Entry): Sha256[] {
  switch (entry.e) {
    case 'photo.add':
      return [entry.photo.blob];
    case 'claim.put':
      return entry.claim.evidence.flatMap((e) => e.blob ?? []);
    case 'reading.add': {
      const { evidence, value } = entry.reading;
      return [
        ...evidence.flatMap((e) => e.blob ?? []),
        ...(value.t === 'blob' ? [value.hash] : []),
      ];
    }
    default:
      return [];
  }
}
