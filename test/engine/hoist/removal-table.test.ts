/**
 * Question hoist-balance against sums of the demo's table made apart from this project's code
 * (invented data: it proves the sums, not the method). X, Y, Z and margins to 1 mm; masses of the
 * true column to 0.05 kg, of the weighed one to their spread.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import { cellText, readTable } from '../../../demo/csv.ts';
import { BAD_ORDER, HOIST_STAGES } from '../../../demo/source/hoist-check.ts';
import { BAD_REMOVALS } from '../../../demo/source/removals.ts';
import { ROOT } from '../../../scripts/root.ts';
import type { StudyView } from '../../../src/study/index.ts';
import { out } from '../made-question.ts';
import { balanceAt, planStudy } from './plan-study.ts';

/** The table of parts with the true masses in place of those weighed. */
function withTrueMasses(text: string): string {
  const rows = readTable(`${ROOT}/demo/source/parts.csv`);
  const pieces = (id: string) => {
    const row = rows.find((r) => cellText(r, 'id') === id) ?? {};
    return Number(cellText(row, 'unit_mass_true_kg')) * Number(cellText(row, 'qty'));
  };
  const [head = '', ...lines] = text.trim().split('\n');
  const at = head.split(',').indexOf('mass_kg');
  const changed = lines.map((line) => {
    const quoted = /"[^"]*"/g;
    const kept = line.match(quoted) ?? [];
    const cells = line.replace(quoted, '"').split(',');
    cells[at] = String(pieces(cells[0] ?? ''));
    let i = 0;
    return cells.map((c) => c.replace('"', () => kept[i++] ?? '')).join(',');
  });
  return `${[head, ...changed].join('\n')}\n`;
}

const within = (x: number, wanted: number, by: number) =>
  expect(Math.abs(x - wanted)).toBeLessThanOrEqual(by);

describe.each([
  ['weighed', {}, 0.5],
  ['true', { 'parts.csv': withTrueMasses }, 0.051],
])('the plan of VAN-27, %s masses', (_, inPlace, byKg) => {
  let view: StudyView;
  beforeAll(async () => {
    view = await planStudy(undefined, inPlace);
  });

  it.each(HOIST_STAGES.map((stage, i) => [stage.left, `R0${i}`, stage] as const))(
    'after "%s" (%s): mass, centre and margin',
    async (_left, label, stage) => {
      const answer = await balanceAt(view, label);
      within(out(answer, 'mass').x, stage.kg, byKg);
      within(out(answer, 'x').x * 1000, stage.xMm, 1);
      within(out(answer, 'y').x * 1000, stage.yMm, 1);
      within(out(answer, 'z').x * 1000, stage.zMm, 1);
      within(out(answer, 'marginX').x * 1000, stage.marginMm, 1);
      expect(out(answer, 'spareX').decision?.word).toBe('holds');
    },
  );

  it('each margin has a spread, from masses, positions and pads', async () => {
    for (const name of ['x', 'y', 'z', 'marginX', 'spareX', 'spareArm'])
      expect(out(await balanceAt(view, 'R04'), name).u).toBeGreaterThan(0);
  });
});

describe('a bad order', () => {
  it('is stopped at its step: 371 by itself, 234 with the pull, limit 273', async () => {
    const view = await planStudy(BAD_REMOVALS);
    const answer = await balanceAt(view, 'R06');
    within(out(answer, 'mass').x, BAD_ORDER.kg, 0.3);
    within(out(answer, 'x').x * 1000, BAD_ORDER.xMm, 1);
    within(out(answer, 'marginX').x * 1000, BAD_ORDER.marginMm, 1);
    within(out(answer, 'pulledX').x * 1000, BAD_ORDER.pull.marginMm, 1);
    within(out(answer, 'limitX').x * 1000, BAD_ORDER.limitMm, 1e-6);
    expect(out(answer, 'spareX').decision?.word).toBe('fails');
  });
});
