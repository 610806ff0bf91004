/** Question proposed-changes: the designs of the invented demo, ranked by what they save. */
import { describe, expect, it } from 'vitest';
import { demoStudy } from '../joining/demo-study.ts';
import { askRegistered, out } from '../made-question.ts';

const view = await demoStudy('clean');
const changes = await askRegistered('proposed-changes', view);
const rows = changes.detail?.rows ?? [];

describe('proposed changes of the demo', () => {
  it('are all other designs of both functions, the largest saving first', () => {
    expect(out(changes, 'changes').x).toBe(6);
    expect(rows.length).toBe(6);
    const saved = rows.map((row) => Number(row[2]));
    expect(saved).toEqual([...saved].sort((a, b) => b - a));
    expect(out(changes, 'largest').x).toBeCloseTo(saved[0] ?? 0, 9);
  });

  it('save what the designs side by side say, with the same spread and word', async () => {
    const lid = await askRegistered('alternative-costs', view, 'LID');
    const pair = lid.further?.[0]?.rows.find((row) => row[1] === '58 spring clips');
    const own = rows.find((row) => row[1] === '58 spring clips');
    expect(own?.[2]).toBeCloseTo(Number(pair?.[2]), 9);
    expect(own?.[3]).toBeCloseTo(Number(pair?.[3]), 9);
    expect(own?.[4]).toBe(pair?.[4]);
  });

  it('say how well they are known, what may go wrong and when they could come', () => {
    const steel = rows.find((row) => row[1] === 'stamped steel');
    expect(steel?.[9]).toBe('supplied');
    expect(steel?.[10]).toContain('corrodes');
    expect(steel?.[11]).toContain('tools');
  });
});
