/** The lid of the demo (invented): what the record gives, by hand where a few lines do. */
import { describe, expect, it } from 'vitest';
import { demoStudy } from '../joining/demo-study.ts';
import { askRegistered, out } from '../made-question.ts';
import { shown } from '../structure/asked.ts';

describe('seal-line-load of the demo’s lid', async () => {
  const view = await demoStudy('clean');
  const answer = await askRegistered('seal-line-load', view, view.find('J101')?.id);

  it('least between two screws at the pitch, with limiters and without', () => {
    // k = 1.8 / 2.4 N/mm², EI = 10000 · 28 · 2.6³ / 12 N·mm²: β = 0.026 /mm, u = 2.314.
    const u = (0.75 / (4 * ((10_000 * 28 * 2.6 ** 3) / 12))) ** 0.25 * 89;
    const [sh, ch] = [Math.sinh(u / 2), Math.cosh(u / 2)];
    const middle = sh * Math.cos(u / 2) + ch * Math.sin(u / 2);
    expect(shown(answer, 'held')).toBeCloseTo((2 * 1.8 * middle) / (Math.sinh(u) + Math.sin(u)), 9);
    const mean = 8000 / 89;
    expect(shown(answer, 'mean')).toBeCloseTo(mean, 9);
    expect(shown(answer, 'pressed')).toBeCloseTo(
      (mean * u * middle) / (Math.cosh(u) - Math.cos(u)),
      6,
    );
  });

  it('with the pitch at which it falls below the demand, and a word', () => {
    expect(shown(answer, 'heldPitch')).toBeGreaterThan(104);
    expect(shown(answer, 'heldPitch')).toBeLessThan(115);
    expect(shown(answer, 'pressedPitch')).toBeGreaterThan(shown(answer, 'heldPitch'));
    expect(out(answer, 'heldMargin').decision?.word).toBe('not proven');
    expect(out(answer, 'pressedMargin').decision?.word).toBe('holds');
  });

  it('less at corners and under pressure', () => {
    expect(shown(answer, 'heldCorner')).toBeLessThan(shown(answer, 'held'));
    expect(shown(answer, 'heldPressure')).toBeLessThan(1);
    expect(shown(answer, 'lift')).toBeCloseTo((8e3 * 1.8) / 5.54 / 1000, 9);
  });

  it('is drawn along the flange with its demand, once with limiters and once without', () => {
    const plots = (answer.figures ?? []).flatMap((f) => (f.f === 'line' ? [f] : []));
    expect(plots).toHaveLength(2);
    for (const { demands, series } of plots) {
      expect(demands?.map((d) => d.y)).toEqual([1000]);
      expect(series[0]?.points.every((p) => Number.isFinite(p.x))).toBe(true);
    }
    const [held] = plots;
    const least = Math.min(...(held?.series[0]?.points.map((p) => p.x) ?? []));
    expect(least / 1000).toBeCloseTo(shown(answer, 'heldCorner'), 3);
  });
});

it('of a joint of which nothing is recorded, the question ends, without a number', async () => {
  const view = await demoStudy('clean');
  const answer = await askRegistered('seal-line-load', view, view.find('J102')?.id);
  expect(Object.keys(answer.outs)).toEqual([]);
});

describe('lid-choice: clips instead of screws', async () => {
  const view = await demoStudy('clean');
  const lid = view.find('LID')?.id;
  const answer = await askRegistered('lid-choice', view, lid);

  it('cost, both times and crossings are those of alternative-costs', async () => {
    const costs = await askRegistered('alternative-costs', view, lid);
    const table = costs.further?.concat(costs.detail ?? []) ?? [];
    const rows = [...table, ...(costs.detail ? [costs.detail] : [])].flatMap((t) => t.rows);
    const of = (name: string) => rows.find((r) => r[0] === name && r.length > 8) ?? [];
    const [screws, clips] = [of('62 screws into rivet nuts, as built'), of('58 spring clips')];
    expect(out(answer, 'cost').x).toBeCloseTo(Number(screws[4]) - Number(clips[4]), 9);
    expect(out(answer, 'time').x).toBeCloseTo(Number(screws[7]) - Number(clips[7]), 9);
    expect(out(answer, 'crossings').x).toBe(Number(screws[9]) - Number(clips[9]));
    expect(out(answer, 'service').x).toBeCloseTo(Number(screws[10]) - Number(clips[10]), 9);
    expect(out(answer, 'cost').decision?.direction).toBe('clips are cheaper');
  });

  it('line loads are those of seal-line-load; of the clips by hand', async () => {
    const load = await askRegistered('seal-line-load', view, view.find('J101')?.id);
    expect(shown(answer, 'screwLoad')).toBeCloseTo(shown(load, 'held'), 9);
    expect(shown(answer, 'screwPressure')).toBeCloseTo(shown(load, 'heldPressure') - 1, 9);
    const u = (0.75 / (4 * ((10_000 * 28 * 2.6 ** 3) / 12))) ** 0.25 * (5540 / 58);
    const middle = Math.sinh(u / 2) * Math.cos(u / 2) + Math.cosh(u / 2) * Math.sin(u / 2);
    const clips = (((210 * 58) / 5540) * u * middle) / (Math.cosh(u) - Math.cos(u));
    expect(shown(answer, 'clipLoad')).toBeCloseTo(clips, 9);
    expect(shown(answer, 'clipPressure')).toBeCloseTo(clips - 1 - (8e3 * 1.8) / 5.54 / 1000, 9);
    expect(shown(answer, 'opens')).toBeCloseTo(((clips - 1) * 5.54) / 1.8, 9);
  });

  it('each with its word: cheaper and quicker, tight at rest, not when the vents open', () => {
    const word = (name: string) => out(answer, name).decision?.word;
    expect(word('cost')).toBe('different');
    expect(word('time')).toBe('different');
    expect(word('service')).toBe('different');
    expect(word('clipMargin')).toBe('holds');
    expect(word('clipPressure')).toBe('fails');
    expect(answer.detail?.rows).toHaveLength(2);
  });
});
