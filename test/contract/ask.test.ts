import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadAll, QUESTION_INDEX } from '../../src/engine/index.ts';
import { askAnswer, questionsAnswer, studyAnswersAnswer } from '../../src/server/index.ts';
import { refusalsOf, Served } from './serve.ts';
import { STUDY, smallStudy } from './small-study.ts';

let served: Served;
beforeAll(async () => {
  served = await Served.start();
  await served.post(`/api/studies/${STUDY}/changes`, { changes: smallStudy().changes });
});
afterAll(() => served.close());

const pretty = (json: unknown) => `${JSON.stringify(json, null, 2)}\n`;
const pack = {
  energy: '63 kW.h',
  mass: '390 ± 1 kg',
  length: '2 m',
  width: '1.25 m',
  height: '12 cm',
};

describe('questions', () => {
  test('are all of the registry, as plain data', async () => {
    const { questions } = questionsAnswer.parse((await served.call('/api/questions')).json);
    expect(questions.map((q) => q.id)).toEqual(QUESTION_INDEX.map((head) => head.id));
  });

  test('say of their inputs and outputs what a form needs', async () => {
    const { questions } = questionsAnswer.parse((await served.call('/api/questions')).json);
    for (const [id, question] of await loadAll()) {
      const plain = questions.find((q) => q.id === id);
      expect(plain?.inputs.map((i) => i.name)).toEqual(question.inputs.map((i) => i.name));
      expect(plain?.outputs.map((o) => o.name)).toEqual(question.body.outputs.map((o) => o.name));
      expect(plain?.cautions).toHaveLength(question.cautions.length);
    }
    const plainPack = questions.find((q) => q.id === 'pack-energy-density');
    await expect(pretty(plainPack)).toMatchFileSnapshot('snapshots/question-pack.json');
  });
});

describe('ask', () => {
  test('of written values', async () => {
    const answer = await served.post('/api/ask', { question: 'pack-energy-density', values: pack });
    expect(answer.status).toBe(200);
    const { answers } = askAnswer.parse(answer.json);
    // 63 kW·h in 390 kg and in 2 × 1.25 × 0.12 m³: 161.54 W·h/kg and 210 W·h/L.
    expect(answers[0]?.outs.specific?.x).toBeCloseTo((63 * 3.6e6) / 390, 6);
    expect(answers[0]?.outs.volumetric?.x).toBeCloseTo((63 * 3.6e6) / 0.3, 3);
    await expect(pretty(answer.json)).toMatchFileSnapshot('snapshots/ask-pack.json');
  });

  test.each(QUESTION_INDEX.map((head) => head.id))('%s with its own example', async (id) => {
    const { questions } = questionsAnswer.parse((await served.call('/api/questions')).json);
    const values = questions.find((q) => q.id === id)?.example;
    const answer = await served.post('/api/ask', { question: id, values });
    expect(answer.status).toBe(200);
    const outs = askAnswer.parse(answer.json).answers[0]?.outs ?? {};
    expect(Object.keys(outs).length).toBeGreaterThan(0);
  });

  test('of a study, then of a subject, then with a value over it', async () => {
    const ask = async (more: object) =>
      askAnswer.parse(
        (await served.post('/api/ask', { question: 'mass-roll-up', study: STUDY, ...more })).json,
      ).answers;
    const [whole, none] = await ask({});
    expect(none).toBeUndefined();
    expect(whole?.outs.mass).toMatchObject({ x: 20.75, kind: 'mass', unit: 'kg' });
    expect(whole?.outs.mass?.u).toBeCloseTo(0.01 * Math.SQRT2, 12);
    expect((await ask({ subject: 'no. van' }))[0]?.outs.mass?.x).toBe(20.75);
    const parts = [{ mass: '1 ± 0.1 kg' }, { mass: '2 ± 0.1 kg' }];
    expect((await ask({ values: { parts } }))[0]?.outs.mass?.x).toBe(3);
  });

  test.each<[string, object, number, string, string]>([
    ['an unknown question', { question: 'how-fast' }, 404, 'not-found', 'no question'],
    ['an unknown study', { question: 'mass-roll-up', study: 'x' }, 404, 'not-found', 'no study'],
    [
      'an unknown subject',
      { question: 'mass-roll-up', study: STUDY, subject: 'x' },
      404,
      'not-found',
      'nothing of this',
    ],
    [
      'unknown rates',
      { question: 'part-cost', study: STUDY, rates: 'v9' },
      404,
      'not-found',
      'no rate book',
    ],
    [
      'a subject of another kind',
      { question: 'pack-energy-density', study: STUDY, subject: 'no. door' },
      422,
      'bad-value',
      'asked of a',
    ],
    [
      'what nothing there can answer',
      { question: 'pack-energy-density', study: STUDY },
      422,
      'no-answer',
      'nothing in the study',
    ],
    [
      'a subject without a study',
      { question: 'mass-roll-up', subject: 'no. van' },
      400,
      'bad-call',
      'no study is named',
    ],
    [
      'rates without a study',
      { question: 'part-cost', rates: 'v1' },
      400,
      'bad-call',
      'no study is named',
    ],
    [
      'a value that can not be read',
      { question: 'pack-energy-density', values: { ...pack, mass: 'heavy' } },
      422,
      'bad-value',
      '',
    ],
    [
      'a value of another kind',
      { question: 'pack-energy-density', values: { ...pack, mass: '3 m' } },
      422,
      'bad-value',
      '',
    ],
    [
      'an unknown input',
      { question: 'pack-energy-density', values: { ...pack, colour: 'red' } },
      422,
      'bad-value',
      'no input',
    ],
    [
      'a number instead of words',
      { question: 'pack-energy-density', values: { mass: 390 } },
      400,
      'bad-call',
      'does not fit',
    ],
    ['no question', {}, 400, 'bad-call', 'missing'],
    ['an unknown field', { question: 'mass-roll-up', loud: true }, 400, 'bad-call', '"loud"'],
  ])('refuses %s', async (_what, body, status, code, why) => {
    const answer = await served.post('/api/ask', body);
    expect(answer.status).toBe(status);
    const [first] = refusalsOf(answer);
    expect(first?.code).toBe(code);
    expect(first?.why).toContain(why);
    expect(first?.next).not.toBe('');
  });
});

describe('answers of a study', () => {
  test('are those of every question, by the schema', async () => {
    const answer = await served.call(`/api/studies/${STUDY}/answers`);
    expect(answer.status).toBe(200);
    const { answers, claims } = studyAnswersAnswer.parse(answer.json);
    expect(answers.find((a) => a.question === 'mass-roll-up')?.outs.mass?.x).toBe(20.75);
    expect(claims).toEqual([]);
  });

  test('a study that is not there', async () => {
    const answer = await served.call('/api/studies/nowhere/answers');
    expect(answer.status).toBe(404);
    expect(refusalsOf(answer)[0]?.code).toBe('not-found');
  });
});
