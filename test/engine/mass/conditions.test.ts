import { describe, expect, it } from 'vitest';
import { answerStudy, loadAll } from '../../../src/engine/index.ts';
import type { Entry } from '../../../src/study/index.ts';
import { mass, node, point, read, scalar, studyOf } from '../../study/made-study.ts';
import { askRegistered, out } from '../made-question.ts';

const IN_KERB: readonly Entry[] = [
  { v: 1, e: 'condition.put', id: 'running', words: 'running order' },
  node('p1', 'van'),
  read('p1', 'mass', mass(1000, 0.1)),
  read('p1', 'position', point([1, 0, 0.5], 0.01)),
  read('van', 'wheelbase', scalar('length', 2.5, 0.002)),
];
const CORNERS = ['FL', 'FR', 'RL', 'RR'];
const loads = (condition: string): Entry[] =>
  CORNERS.map((c) => read('van', `cornerLoad.${c}`, mass(250, 0.5), { condition } as never));

describe('corner loads read in another condition than the parts', () => {
  const view = studyOf(...IN_KERB, ...loads('running'));

  it.each(['mass-balance', 'mass-closure', 'mass-faults'])(
    'are refused by %s with both conditions named',
    async (id) => {
      await expect(askRegistered(id, view)).rejects.toMatchObject({
        refusals: [
          {
            code: 'unlike-conditions',
            value: 'running order',
            why: expect.stringMatching(/"kerb".*"running order"/),
          },
        ],
      });
    },
  );

  it('leave the other answers of the study standing, with the refusal beside them', async () => {
    const { answers, refused } = answerStudy(view, await loadAll());
    expect(refused.map((r) => r.question.id)).toEqual(
      expect.arrayContaining(['mass-balance', 'mass-closure']),
    );
    expect(answers.map((a) => a.question)).toContain('mass-roll-up');
    expect(answers.map((a) => a.question)).not.toContain('mass-closure');
  });

  it('are taken where they were read in both', async () => {
    const both = studyOf(...IN_KERB, ...loads('running'), ...loads('kerb'));
    expect(out(await askRegistered('mass-balance', both), 'force').x).toBeCloseTo(0, 9);
  });

  it('that are simply missing are missing, not refused', async () => {
    const none = studyOf(...IN_KERB);
    const { findings } = await askRegistered('mass-closure', none);
    expect(findings.map((f) => f.place.property)).toContain('cornerLoad.FL');
  });
});

it('payload is no part of the kerb mass', async () => {
  const view = studyOf(...IN_KERB, ...loads('kerb'), read('van', 'payload', mass(650, 1)));
  expect(out(await askRegistered('mass-balance', view), 'force').x).toBeCloseTo(0, 9);
});
