import { describe, expect, it } from 'vitest';
import { pairsIn, scorePair, scoreText, WALKAROUNDS } from '../../demo/walkaround/score.ts';

const pairs = pairsIn(WALKAROUNDS);
/** Of 33 in 33 the interval ends at 1, but for the last digit of the arithmetic. */
const ROUNDING = 1e-12;
const named = (name: string) => pairs.filter((pair) => pair.text.endsWith(name));

describe('walkarounds of the demo against their hand-marked keys', () => {
  it.each(named('first.vtt'))('the text the rules were mended by', (pair) => {
    const score = scorePair(pair);
    expect(score.items).toBeGreaterThanOrEqual(120);
    expect(score.traps).toBeGreaterThanOrEqual(20);
    for (const { precision, recall } of score.fields) {
      expect(precision.share).toBeGreaterThanOrEqual(0.9);
      expect(recall.share).toBeGreaterThanOrEqual(0.8);
    }
    expect(score.caught.length).toBeLessThanOrEqual(2);
  });

  it.each(pairs)('every text is scored whole, with intervals: $text', (pair) => {
    const score = scorePair(pair);
    expect(score.items).toBeGreaterThan(0);
    for (const { precision, recall } of score.fields) {
      expect(precision.low).toBeLessThanOrEqual(precision.share + ROUNDING);
      expect(recall.high).toBeGreaterThanOrEqual(recall.share - ROUNDING);
    }
    expect(scoreText('text', score, false)).toMatch(
      /part +precision \d+\.\d % \(\d+ of \d+; \d+\.\d % to \d+\.\d %\)/,
    );
  });
});
