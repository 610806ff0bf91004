import { describe, expect, it } from 'vitest';
import { BAD_REMOVALS } from '../../demo/source/removals.ts';
import { hoistSheets, loadAll } from '../../src/engine/index.ts';
import {
  hoistText,
  renderPdf,
  reportHoist,
  reportModel,
  summaryText,
} from '../../src/report/index.ts';
import { type Entry, extend } from '../../src/study/index.ts';
import { planStudy } from '../engine/hoist/plan-study.ts';
import { override } from '../study/gate-records.ts';
import { MadeStudy } from '../study/made-study.ts';
import { everything } from './fixture.ts';

const questions = await loadAll();

async function sheets(more: (id: (label: string) => string) => readonly Entry[] = () => []) {
  const view = await planStudy(BAD_REMOVALS);
  const made = new MadeStudy();
  const entries = more((label) => view.find(label)?.id ?? '');
  if (entries.length > 0) made.act(entries);
  const found = hoistSheets(extend(view, made.changes), questions);
  if (!found) throw new Error('the study has no plan');
  return found;
}

describe('the removal plan in the report', () => {
  it('says which step is stopped, by how much, and which orders hold', async () => {
    const hoist = reportHoist(await sheets());
    const stopped = hoist.steps.filter((s) => s.standing === 'stopped');
    expect(stopped.map((s) => s.label)).toEqual(['R06']);
    expect(stopped[0]?.against.join()).toMatch(/margin in X beyond what is asked for.*fails/);
    expect(hoist.proposals.length).toBeGreaterThan(0);
    expect(hoistText(hoist)).toContain('An order that keeps every precedence and margin');
  });

  it('names an override with its reason, on paper and on the terminal', async () => {
    const hoist = await sheets((id) => [override(id('R03'), 'lowering', 'A. Lead', 'stands away')]);
    const model = reportModel({ ...everything(), hoist });
    expect(summaryText(model)).toContain('override by A. Lead: stands away');
    const pdf = await renderPdf(model);
    expect(new TextDecoder('latin1').decode(pdf.slice(0, 5))).toBe('%PDF-');
  });
});
