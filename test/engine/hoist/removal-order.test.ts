/** Question removal-order, asked of the made-up plan of the demo and of one in a bad order. */
import { describe, expect, it } from 'vitest';
import { BAD_REMOVALS, REMOVALS } from '../../../demo/source/removals.ts';
import type { Answer } from '../../../src/engine/index.ts';
import { out } from '../made-question.ts';
import { balanceAt, orderOf, planStudy } from './plan-study.ts';

const stepsIn = (answer: Answer, table: number): string[] =>
  (answer.further?.[table]?.rows ?? []).map((row) => String(row[1]));

describe('the planned order', () => {
  it('holds after every step, keeps its precedence and needs no other', async () => {
    const answer = await orderOf(await planStudy());
    expect(out(answer, 'spareX').decision?.word).toBe('holds');
    expect(out(answer, 'spareArm').decision?.word).toBe('holds');
    expect(answer.findings.filter((f) => f.level === 'gap')).toEqual([]);
    expect(answer.detail?.rows.map((row) => row.at(-1))).toEqual(REMOVALS.map(() => 'holds'));
    expect(answer.figures?.map((f) => f.title)).toEqual(
      expect.arrayContaining(['On the pads, seen from above', 'On the pads, seen from the left']),
    );
  });

  it('knows from joints and blockers that brakes wait for the wheels', async () => {
    const answer = await orderOf(await planStudy());
    const after = Object.fromEntries((answer.detail?.rows ?? []).map((r) => [r[0], r[2]]));
    expect(after.R03).toContain('R01');
    expect(after.R04).toContain('R01');
    expect(after.R02).toBe('R00');
  });

  it('with the rear module first is told to wait for the wheels', async () => {
    const [raise, wheels, pack, front, rear, ...rest] = REMOVALS;
    const turned = [raise, rear, wheels, pack, front, ...rest].flatMap((r) => r ?? []);
    const { findings } = await orderOf(await planStudy(turned));
    expect(findings.find((f) => f.code === 'removal-too-early')).toMatchObject({
      place: { subject: 'R04' },
      value: 'R01',
    });
  });
});

describe('the bad order', () => {
  it('is not planned at its step, by how much is said, and orders that hold are proposed', async () => {
    const view = await planStudy(BAD_REMOVALS);
    const answer = await orderOf(view);
    expect(out(answer, 'spareX').decision?.word).toBe('fails');
    const stopped = answer.findings.filter((f) => f.code === 'hoist-limit');
    expect(stopped.map((f) => f.place.subject)).toEqual(['R06']);
    expect(stopped[0]?.value).toMatch(/^−3\d(\.\d)? ± \d/);
    expect(answer.further?.length).toBeGreaterThan(0);
  });

  it.each([0, 1])(
    'proposal %i keeps all precedence and, asked anew, every margin',
    async (table) => {
      const answer = await orderOf(await planStudy(BAD_REMOVALS));
      const order = stepsIn(answer, table);
      expect([...order].sort()).toEqual(BAD_REMOVALS.map((r) => r.number).sort());
      const after = new Map((answer.detail?.rows ?? []).map((r) => [String(r[0]), String(r[2])]));
      for (const [i, step] of order.entries())
        for (const first of (after.get(step) ?? '').split('; ').filter(Boolean))
          expect(order.indexOf(first), `${first} before ${step}`).toBeLessThan(i);
      const moved = order.flatMap((n) => BAD_REMOVALS.find((r) => r.number === n) ?? []);
      const view = await planStudy(moved);
      for (const step of order) {
        const balance = await balanceAt(view, step);
        for (const name of ['spareX', 'spareY', 'spareArm', 'spareLift'])
          expect(out(balance, name).decision?.word, `${step} ${name}`).toBe('holds');
      }
    },
  );
});
