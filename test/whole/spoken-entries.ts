import type { Entry } from '../../src/study/index.ts';

const TAKEN = { local: '2026-01-02T10:00:00' };
const BY = 'lead';

/** Entries of every kind that speech and photographs bring, about parts p1 and p2 and photograph ph1. */
export const spokenEntries = (): Entry[][] => [
  [
    {
      ...{ v: 1, e: 'speech.add' },
      speech: {
        ...{ id: 's1', file: 'talk.vtt', startedAt: TAKEN, by: BY },
        cues: [{ fromS: 1, toS: 4, who: BY, text: 'about two millimetres mark that' }],
      },
    },
    {
      ...{ v: 1, e: 'draft.add' },
      draft: {
        ...{ id: 'd1', speech: 's1', kind: 'quantity', fromS: 1, toS: 3, who: BY },
        ...{ words: 'two millimetres', around: 'about two millimetres mark that', about: ['p1'] },
        quantity: { low: 0.002, high: 0.002, kind: 'length', unit: 'mm', loose: false },
        how: 'guessed',
      },
    },
    { v: 1, e: 'draft.settle', settling: { draft: 'd1', as: 'rejected', made: [] } },
  ],
  [{ v: 1, e: 'word.put', rule: { id: 'w1', said: 'whatsit', means: 'N-p1', use: 'part' } }],
  [{ v: 1, e: 'word.drop', id: 'w0' }],
  [
    {
      ...{ v: 1, e: 'mark.add' },
      mark: { id: 'm1', at: TAKEN, by: BY, how: 'key', about: 'p1', speech: 's1', atS: 3 },
    },
  ],
  [{ v: 1, e: 'photo.about', id: 'ph1', subject: 'p2' }],
  [
    {
      ...{ v: 1, e: 'photo.mark' },
      mark: {
        ...{ id: 'pm1', photo: 'ph1', what: 'scale', words: 'bar', lengthM: 0.1, uM: 0.0002 },
        points: [
          [10, 20],
          [210, 20],
        ],
      },
    },
  ],
];
