import { describe, expect, it } from 'vitest';
import {
  answerStudy,
  askStudy,
  loadAll,
  loadQuestion,
  type WrittenInputs,
} from '../../../src/engine/index.ts';
import type { Entry, StudyView } from '../../../src/study/index.ts';
import { node, read, scalar, studyOf, text } from '../../study/made-study.ts';
import { out, share } from '../made-question.ts';
import { codes, off } from './asked.ts';
import { edges } from './plates.ts';

const mm = (x: number, u: number) => scalar('length', x / 1e3, u / 1e3);
/** A part with a thickness by gauge, a material in words and an envelope. */
const part = (id: string, t: number, material: string, ...more: Entry[]): Entry[] => [
  node(id, 'van'),
  read(id, 'thickness', mm(t, 0.05), { id: `${id}-gauge` }),
  read(id, 'material', text(material), { how: 'seen' }),
  read(id, 'envelope.length', mm(600, 1)),
  read(id, 'envelope.width', mm(400, 1)),
  ...more,
];
async function askPart(view: StudyView, id: string, subject: string, over: WrittenInputs = {}) {
  const { question, questions } = await loadQuestion(id);
  return askStudy(question, questions, { view, subject, over });
}

describe('a floor of two skins, its thickness read once by gauge', async () => {
  const view = studyOf(...part('floor', 2, 'Al 6005A-T6'));
  const core = { core: 'exactly 10 mm', coreMass: '2.1 ± 0.2 kg/m2' };
  const answer = await askPart(view, 'two-skin-stiffness', 'floor', core);

  it('takes the reading for both skins and the constants by its material', () => {
    const d = (70e9 / (1 - 0.3 ** 2)) * ((0.014 ** 3 - 0.01 ** 3) / 12);
    expect(off(out(answer, 'D').x, d)).toBeLessThan(1e-12);
    expect(off(out(answer, 'arealMass').x, 2700 * 0.004 + 2.1)).toBeLessThan(1e-12);
  });

  it('has the spread of the gauge in D times 1.35, since both skins share it', () => {
    const d = out(answer, 'D');
    const gauge = share(d, 'floor-gauge') / d.x;
    expect(gauge / (0.05 / 2)).toBeCloseTo(1.3486, 3);
    expect(answer.variables['floor-gauge']?.label).toContain('FLOOR');
  });

  it('names the table where a constant comes from', () => {
    const modulus = answer.variables['table:material/aluminium/modulus'];
    expect(modulus?.label).toContain('aluminium alloy');
    expect(modulus?.place.property).toContain('EN 1999-1-1');
  });

  it('without its core says what to take', async () => {
    const bare = await askPart(view, 'two-skin-stiffness', 'floor');
    expect(bare.outs.D).toBeUndefined();
    const core = bare.findings.find(
      (f) => f.code === 'missing' && /height of the core/.test(JSON.stringify(f)),
    );
    expect(core?.what).toContain('measure it on the part');
  });
});

describe('a solid plate', async () => {
  const view = studyOf(...part('panel', 0.8, 'deep-draw steel'));
  const load = { q: 'exactly 0.05 kPa', ...edges('SSSS') };

  it('bends by the stiffness of its own thickness and material', async () => {
    const stiffness = await askPart(view, 'plate-stiffness', 'panel');
    const d = (210e9 * 0.0008 ** 3) / (12 * (1 - 0.09));
    expect(off(out(stiffness, 'D').x, d)).toBeLessThan(1e-12);
    const answer = await askPart(view, 'plate-under-pressure', 'panel', load);
    // b/a = 1.5: Timoshenko and Woinowsky-Krieger, table 8.
    expect(off(out(answer, 'w').x, (0.007724 * 50 * 0.4 ** 4) / d)).toBeLessThan(2e-3);
    expect(out(answer, 'w').u).not.toBe('incomplete');
    // Thickness goes in by its third power, through the stiffness, and is the one reading of it.
    const w = out(answer, 'w');
    expect(share(w, 'panel-gauge') / w.x / (0.05 / 0.8)).toBeCloseTo(3, 2);
  });

  it('rings and buckles by them, too', async () => {
    const rung = await askPart(view, 'plate-frequencies', 'panel', edges('CCCC'));
    const d = (210e9 * 0.0008 ** 3) / (12 * (1 - 0.09));
    const f = (27.005 / (2 * Math.PI * 0.4 ** 2)) * Math.sqrt(d / (7850 * 0.0008));
    expect(off(out(rung, 'f1').x, f)).toBeLessThan(1e-3);
    const buckled = await askPart(view, 'plate-buckling', 'panel', edges('SSSS'));
    expect(off(out(buckled, 'k').x, 4.34)).toBeLessThan(2e-3);
  });
});

describe('constants of the material', () => {
  it('are the part’s own where somebody has measured them', async () => {
    const own = read('panel', 'modulus', scalar('stress', 198e9, 2e9), { id: 'tensile-test' });
    const view = studyOf(...part('panel', 1, 'steel', own));
    const answer = await askPart(view, 'plate-stiffness', 'panel');
    expect(off(out(answer, 'D').x, (198e9 * 1e-9) / (12 * 0.91))).toBeLessThan(1e-12);
    expect(share(out(answer, 'D'), 'tensile-test')).toBeGreaterThan(0);
    expect(answer.variables['table:material/steel/density']).toBeDefined();
  });

  it('of two parts of one material share their spread: a difference of them has little', async () => {
    const view = studyOf(...part('one', 1, 'steel'), ...part('two', 1, 'steel'));
    const [one, two] = await Promise.all(
      ['one', 'two'].map((id) => askPart(view, 'plate-stiffness', id)),
    );
    const ids = (answer: typeof one) => out(answer as never, 'D').linear.map(([id]) => id);
    expect(
      ids(one)
        .filter((id) => ids(two).includes(id))
        .sort(),
    ).toEqual(['table:material/steel/modulus', 'table:material/steel/poisson']);
  });

  it('are missing, with the reason, for a material the table does not know or that is several', async () => {
    for (const material of ['steel/PA', 'unheard of']) {
      const answer = await askPart(studyOf(...part('odd', 1, material)), 'plate-stiffness', 'odd');
      // Only the exponent of the thickness hangs on no constant.
      expect(Object.keys(answer.outs)).toEqual(['exponent']);
      const why = answer.findings.filter((f) => f.code === 'missing').map((f) => f.what);
      expect(why.join()).toContain(`for "${material}"`);
    }
  });
});

it('sections and plates are asked on request: a whole study does not ask them of every part', async () => {
  const view = studyOf(...part('panel', 0.8, 'steel'));
  const questions = await loadAll();
  const { answers } = answerStudy(view, questions);
  expect(questions.get('plate-stiffness')?.onRequest).toBe(true);
  expect(answers.map((a) => a.question)).not.toContain('plate-stiffness');
});

it('a section asked of a part takes its envelope and thickness, and says what else to measure', async () => {
  const view = studyOf(
    ...part('rail', 3, 'Al 6082-T6', read('rail', 'envelope.height', mm(60, 0.2))),
  );
  const radii = { outer: 'exactly 3 mm', inner: 'exactly 0 mm' };
  const answer = await askPart(view, 'hollow-section', 'rail', radii);
  expect(off(out(answer, 'lineMass').x, 2700 * out(answer, 'area').x)).toBeLessThan(1e-12);
  const bare = await askPart(view, 'hollow-section', 'rail');
  expect(codes(bare).filter((c) => c === 'missing').length).toBeGreaterThanOrEqual(2);
});
