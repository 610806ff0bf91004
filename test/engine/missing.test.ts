import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { mass, node, point, read, scalar, studyOf } from '../study/made-study.ts';
import { ask, askRegistered, formula, madeQuestion, number, out } from './made-question.ts';

const two = [node('p1', 'van'), node('p2', 'van')];

describe('a part without a mass', () => {
  const view = studyOf(
    ...two,
    read('p1', 'mass', mass(10, 0.1)),
    read('p1', 'position', point([1, 0, 0], 0.01)),
    read('p2', 'position', point([3, 0, 0], 0.01)),
  );

  it('leaves the total incomplete, with what is known of it, and is named with the reason', async () => {
    const answer = await askRegistered('mass-roll-up', view);
    const total = out(answer, 'mass');
    expect(total).toMatchObject({ x: 10, u: 'incomplete', knownU: 0.1 });
    expect(total.missing).toEqual([{ subject: 'P2 name of p2', property: 'mass' }]);
    const gap = answer.findings.find((f) => f.code === 'missing');
    expect(gap).toMatchObject({ level: 'gap', place: { subject: 'P2 name of p2' } });
    expect(gap?.what).toContain('(no reading)');
  });

  it('does not pull the centre of gravity towards zero', async () => {
    const x = out(await askRegistered('mass-roll-up', view), 'x');
    expect(x.x).toBeCloseTo(1, 12);
    expect(x.u).toBe('incomplete');
  });

  it('says in the closure that the gross error may be larger, without a decision word', async () => {
    const loads = ['FL', 'FR', 'RL', 'RR'].map((c) => read('van', `cornerLoad.${c}`, mass(5, 0.1)));
    const answer = await askRegistered(
      'mass-closure',
      studyOf(...two, read('p1', 'mass', mass(10, 0.1)), ...loads),
    );
    expect(out(answer, 'gap')).toMatchObject({ x: -10, u: 'incomplete' });
    expect(out(answer, 'gap').decision).toBeUndefined();
    expect(answer.findings.map((f) => f.code)).toContain('gross-error-may-be-larger');
    expect(out(answer, 'scales').u).toBeCloseTo(0.2, 12);
  });
});

describe('a part without a position', () => {
  const view = studyOf(
    ...two,
    read('p1', 'mass', mass(10, 0.1)),
    read('p2', 'mass', mass(20, 0.2)),
    read('p1', 'position', point([1, 0, 0], 0.01)),
  );

  it('counts in the mass, which stays complete', async () => {
    const total = out(await askRegistered('mass-roll-up', view), 'mass');
    expect(total).toMatchObject({ x: 30, missing: [] });
    expect(total.u).toBeCloseTo(Math.hypot(0.1, 0.2), 12);
  });

  it('is left out of the centre of gravity, and named', async () => {
    const x = out(await askRegistered('mass-roll-up', view), 'x');
    expect(x).toMatchObject({ x: 1, u: 'incomplete' });
    expect(x.missing.map((p) => p.subject)).toEqual(['P2 name of p2']);
  });
});

describe('one coordinate of three', () => {
  it('is no position: the others decide where the centre of gravity is', async () => {
    const { question } = await loadQuestion('mass-roll-up');
    const whole = { y: '0 ± 1 mm', z: '0 ± 1 mm', assembly: '' };
    const answer = askWritten(question, {
      parts: [
        { mass: '1 ± 0.1 kg', x: '1000 ± 1 mm', ...whole },
        { mass: '1 ± 0.1 kg', x: '3000 ± 1 mm', assembly: '' },
      ],
    });
    expect(out(answer, 'x')).toMatchObject({ x: 1, u: 'incomplete' });
  });
});

describe('groups of a tally', () => {
  it('count the rows that lack something, and leave out sums of nothing', async () => {
    const view = studyOf(
      node('a1', 'van', 'assembly'),
      node('a2', 'van', 'assembly'),
      ...['p1', 'p2', 'p3'].map((id) => node(id, 'a1')),
      node('p4', 'a2'),
      read('p1', 'mass', mass(10, 0.1)),
      read('p1', 'position', point([1, 0, 0], 0.01)),
      read('p2', 'mass', mass(20, 0.1)),
    );
    const { groups = [] } = await askRegistered('mass-roll-up', view);
    expect(groups.map((g) => [g.group, g.rows, g.missing, Object.keys(g.terms)])).toEqual([
      ['A1 name of a1', 3, 2, ['mass', 'placed', 'momentX', 'momentY', 'momentZ']],
      ['A2 name of a2', 1, 1, []],
    ]);
    expect(groups[0]?.terms.mass?.x).toBe(30);
  });
});

describe('a missing number', () => {
  const question = madeQuestion([number('a'), number('b'), number('c')], {
    body: 'row',
    outputs: [
      { ...of('sum', (a, b, _c) => a + b) },
      { ...of('product', (_a, b, c) => b * c) },
      { ...of('curved', (a, b, _c) => a * a * b) },
    ],
  });
  const answer = ask(
    question,
    studyOf(read('van', 'a', scalar('ratio', 2, 0.1)), read('van', 'b', scalar('ratio', 3, 0.1))),
  );

  it('matters only where the formula depends on it', () => {
    expect(out(answer, 'sum')).toMatchObject({ x: 5, missing: [], meanShift: 0 });
    expect(out(answer, 'sum').u).toBeCloseTo(Math.hypot(0.1, 0.1), 9);
    expect(Number.isFinite(out(answer, 'curved').meanShift)).toBe(true);
  });

  it('takes with it what does depend on it, by name', () => {
    expect(answer.outs.product).toBeUndefined();
    expect(answer.findings.map((f) => [f.code, f.place.property])).toEqual([
      ['missing', 'c'],
      ['not-worked-out', 'what comes out'],
    ]);
  });

  it('of a sum of scalars is named by its own reading', async () => {
    const loads = ['FL', 'FR', 'RL'].map((c) => read('van', `cornerLoad.${c}`, mass(400, 0.5)));
    const answer = await askRegistered('cg-from-corners', studyOf(...loads));
    expect(Object.keys(answer.outs)).toEqual([]);
    expect(answer.findings.map((f) => f.place.property)).toContain('cornerLoad.RR');
  });

  it('of which only a formula without it asks leaves the rest whole', async () => {
    const loads = ['FL', 'FR', 'RL', 'RR'].map((c) =>
      read('van', `cornerLoad.${c}`, mass(400, 0.5)),
    );
    const answer = await askRegistered('cg-from-corners', studyOf(...loads));
    expect(out(answer, 'total')).toMatchObject({ x: 1600, u: 1, missing: [] });
    expect(answer.outs.x).toBeUndefined();
  });
});

describe('a study of nothing', () => {
  it('without a vehicle is refused, with what to do', async () => {
    const { fold } = await import('../../src/study/index.ts');
    await expect(askRegistered('mass-roll-up', fold('empty', []))).rejects.toMatchObject({
      refusals: [{ code: 'not-found', next: 'Import a record first.' }],
    });
  });

  it('without a part has no mass, which is not zero', async () => {
    for (const id of ['mass-roll-up', 'install-time', 'part-cost']) {
      const answer = await askRegistered(id, studyOf());
      expect(answer.outs).toEqual({});
      expect(answer.findings.map((f) => f.code)).toContain('missing');
    }
  });

  it('whose vehicle was retired is refused', async () => {
    const view = studyOf({ v: 1, e: 'node.retire', id: 'van', why: 'wrong vehicle' });
    expect(view.root()).toBeUndefined();
    await expect(askRegistered('mass-roll-up', view)).rejects.toThrow('no vehicle');
  });

  it('gives no number that is not finite', async () => {
    for (const id of ['mass-closure', 'cg-from-corners', 'cg-height-axle-lift', 'joint-census']) {
      const { outs } = await askRegistered(id, studyOf());
      for (const o of Object.values(outs))
        expect([o.x, o.knownU, o.meanShift].every(Number.isFinite)).toBe(true);
    }
  });
});

function of(name: string, f: (a: number, b: number, c: number) => number) {
  const body = formula(f as (...x: number[]) => number);
  if (body.body !== 'row' || !body.outputs[0]) throw new Error('no output');
  return { ...body.outputs[0], name };
}
