import { describe, expect, it } from 'vitest';
import { askStudy, askWritten, loadQuestion } from '../../../src/engine/index.ts';
import { out } from '../made-question.ts';
import { demoRecord } from './demo-record.ts';

const { question, questions } = await loadQuestion('cg-height-axle-lift');

// Made-up data: a regression test of the demo's axle lift, no proof.
describe('the axle lift of the demo', async () => {
  const view = await demoRecord('clean');
  const given = (degrees: number, gain: number) =>
    askWritten(question, {
      lifts: [{ angle: `${degrees} ± 0.1 °`, gain: `${gain} ± 0.7 kg` }],
      ...{ mass: '1645.5 ± 1 kg', wheelbase: '2920 ± 2 mm', radius: '325 ± 2 mm' },
    });
  const mm = (x: number | string) => 1000 * Number(x);

  it('puts the centre of gravity at 522 mm, by three angles', () => {
    const height = out(askStudy(question, questions, { view }), 'height');
    expect(Math.round(mm(height.x))).toBe(522);
    expect(mm(height.u)).toBeLessThan(mm(out(given(12, 23.6), 'height').u));
  });

  it('knows it with 6 to 9 mm from 12° alone, with about three times that from 4° alone', () => {
    const [far, near] = [given(12, 23.6), given(4, 7.8)].map((a) => mm(out(a, 'height').u));
    expect(far).toBeGreaterThan(6);
    expect(far).toBeLessThan(9);
    expect(Number(near) / Number(far)).toBeGreaterThan(2.4);
    expect(Number(near) / Number(far)).toBeLessThan(3.6);
  });
});
