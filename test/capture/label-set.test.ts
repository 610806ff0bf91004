import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LabelSet, labelDigest } from '../../src/capture/label-set.ts';

describe('labels seen', () => {
  it('knows what a set of texts knows', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 3 })), (labels) => {
        const ours = new LabelSet();
        const theirs = new Set<string>();
        for (const label of labels) {
          expect(ours.add(label)).toBe(!theirs.has(label));
          theirs.add(label);
        }
        expect(ours.size).toBe(theirs.size);
      }),
    );
  });

  it('tells two hundred thousand running numbers apart', () => {
    const set = new LabelSet();
    for (let i = 0; i < 200_000; i++) set.add(`P${i}`);
    expect(set.size).toBe(200_000);
  });

  it('digests are whole numbers above zero', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const digest = labelDigest(text);
        expect(Number.isSafeInteger(digest) && digest > 0).toBe(true);
      }),
    );
  });
});
