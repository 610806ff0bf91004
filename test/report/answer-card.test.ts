/** An answer to be defended, in one model: working with numbers put in, bars, and who says so. */
import { describe, expect, it } from 'vitest';
import { loadQuestion } from '../../src/engine/index.ts';
import { formulaText } from '../../src/formula/index.ts';
import { answerText, reportAnswer } from '../../src/report/index.ts';
import { askRegistered } from '../engine/made-question.ts';
import { mass, read, scalar, studyOf } from '../study/made-study.ts';

const CORNERS = { FL: 452, FR: 438, RL: 381, RR: 369 } as const;

const view = studyOf(
  ...Object.entries(CORNERS).map(([corner, kg]) =>
    read('van', `cornerLoad.${corner}`, mass(kg, 0.5)),
  ),
  read('van', 'wheelbase', scalar('length', 2.7, 0.002)),
  read('van', 'track.front', scalar('length', 1.56, 0.003)),
  read('van', 'track.rear', scalar('length', 1.54, 0.003)),
  {
    v: 1,
    e: 'photo.add',
    photo: {
      ...{ id: 'photo-1', blob: 'a'.repeat(64), mediaType: 'image/png', subject: 'van' },
      ...{ caption: 'the van on its scales', takenAt: { local: '2026-01-05T09:00:00' } },
    },
  },
);
const { question } = await loadQuestion('cg-from-corners');
const answer = await askRegistered('cg-from-corners', view);

describe('an answer', () => {
  const report = reportAnswer(answer, question, '', { view });

  it('has its formulas with the numbers of the other lines put in', () => {
    const numbers = report.steps.flatMap((s) => s.worked.numbers ?? []).map(formulaText);
    const spaced = numbers.map((n) => n.replace(/[\u202f\u00a0]/g, ' '));
    // (2 700 mm × 750 kg) / 1 640 kg is 1 234.8 mm, worked by hand.
    expect(spaced).toContain('2 700.0 mm × (381.00 kg + 369.00 kg) / 1 640.0 kg');
    expect(report.outs.find((o) => o.name === 'x')?.shown.value).toMatch(/^1\u202f234\.[78]/);
  });

  it('says who: as written, by whom, when, and on which photograph', () => {
    const [first] = report.said;
    expect(first?.label).toContain('corner load');
    expect(first?.by).toMatch(/^(seen|measured|guessed|inferred|supplied) by .*20\d\d-\d\d-\d\d/);
    expect(first?.photos).toBe('the van on its scales');
    expect(report.said.length + report.saidLeftOut).toBe(7);
    expect(reportAnswer(answer, question).said).toEqual([]);
  });

  it('stands whole on the terminal, within 100 columns', () => {
    const text = answerText(answer, question, '', { view });
    expect(text).toContain('= 2,700.0 mm ×');
    expect(text).toMatch(/█+▌? +\d+ % {2}VAN name of van, corner load/);
    expect(text).toContain('Says who');
    expect(text).toContain('photographs: the van on its scales');
    expect(Math.max(...text.split('\n').map((l) => [...l].length))).toBeLessThanOrEqual(100);
  });
});
