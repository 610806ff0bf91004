import { describe, expect, it } from 'vitest';
import { extend, fold, ulid, ulidMs } from '../../src/study/index.ts';
import { MadeStudy, node, START_MS, studyPut } from './made-study.ts';

const HOUR = 3_600_000;
const started = () => {
  const made = new MadeStudy();
  made.act([studyPut(), node('van', null, 'vehicle')]);
  return made;
};
const found = (made: MadeStudy) =>
  made.view.findings.map(({ code, value, what }) => [code, value, what]);

describe('a clock that jumps', () => {
  it('back is found, with its device and by how much', () => {
    const made = started();
    made.nowMs += 48 * HOUR;
    made.act([node('p1', 'van')]);
    made.nowMs -= 47 * HOUR;
    made.act([node('p2', 'van')]);
    expect(found(made)).toEqual([
      [
        'clock-put-back',
        'desk',
        'the clock of this device was put back by 47 h between two of its changes',
      ],
    ]);
    // What was recorded later stays later.
    expect(made.view.gestures().map((g) => g.words)).toEqual(
      made.changes.map((change) => change.words),
    );
  });

  it('ahead is found once another device has seen it', () => {
    const made = started();
    made.sync('tablet');
    made.nowMs += 2 * HOUR;
    made.act([node('p1', 'van')], { device: 'tablet' });
    made.nowMs -= 2 * HOUR;
    made.act([node('p2', 'van')]);
    expect(found(made)).toEqual([]);
    made.sync('desk');
    made.act([node('p3', 'van')]);
    made.act([node('p4', 'van')]);
    expect(found(made)).toEqual([
      ['clock-ahead', 'tablet', 'the clock of this device was ahead of that of desk by 2 h'],
    ]);
  });

  it('by some minutes is no finding, nor is a pause', () => {
    const made = started();
    made.nowMs += 1000 * HOUR;
    made.act([node('p1', 'van')]);
    made.nowMs -= 4 * 60_000;
    made.act([node('p2', 'van')]);
    expect(found(made)).toEqual([]);
  });

  it('is found the same change by change', () => {
    const made = started();
    made.nowMs += 10 * HOUR;
    made.act([node('p1', 'van')]);
    made.nowMs -= 9 * HOUR;
    made.act([node('p2', 'van')]);
    made.act([node('p3', 'van')]);
    let view = fold(made.study, []);
    for (const change of made.changes) view = extend(view, [change]);
    expect(view.findings).toEqual(made.view.findings);
    expect(view.findings).toHaveLength(1);
  });
});

it('an id tells when it was made', () => {
  expect(ulidMs(ulid(START_MS, Math.random))).toBe(START_MS);
  expect(ulidMs('none')).toBeUndefined();
});
