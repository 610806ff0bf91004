/**
 * Questions joint-census and work-content asked of the made-up record of the demo: it reconciles
 * but for what was planted, and that is named with its place.
 */
import { describe, expect, it } from 'vitest';
import { type Answer, askStudy, loadQuestion } from '../../../src/engine/index.ts';
import type { Entry, Finding, StudyView } from '../../../src/study/index.ts';
import { count, later, node, read, studyOf, text } from '../../study/made-study.ts';
import { out } from '../made-question.ts';
import { demoStudy } from './demo-study.ts';

async function ask(id: string, view: StudyView, subject?: string): Promise<Answer> {
  const { question, questions } = await loadQuestion(id);
  return askStudy(question, questions, { view, ...(subject === undefined ? {} : { subject }) });
}
const found = (answer: Answer, code: string): readonly Finding[] =>
  answer.findings.filter((f) => f.code === code);

describe('the register of the demo', () => {
  it('clean: 63 groups and 474 elements, every bag agrees', async () => {
    const answer = await ask('joint-census', await demoStudy('clean'));
    expect(['groups', 'elements', 'apart', 'strayBags'].map((n) => out(answer, n).x)).toEqual([
      63, 474, 0, 0,
    ]);
    expect(answer.findings).toEqual([]);
  });

  it('faulty: only what was planted differs, named', async () => {
    const answer = await ask('joint-census', await demoStudy('faulty'));
    expect(['groups', 'elements', 'apart', 'strayBags'].map((n) => out(answer, n).x)).toEqual([
      63, 474, 1, 1,
    ]);
    expect(answer.findings).toHaveLength(2);
    expect(found(answer, 'bag-differs-from-holes')).toMatchObject([
      { place: { subject: 'J103' }, value: '17 by bag, 18 by holes' },
    ]);
    const [stray] = found(answer, 'bag-without-joint');
    expect(stray).toMatchObject({ place: { subject: 'B-stray' }, value: '31, M6x16' });
    expect(stray?.next).toContain('J112');
    expect(stray?.next).toContain('J701');
  });

  it('a stopwatch reading overrides the estimate, and the difference is shown', async () => {
    const view = await demoStudy('clean');
    const answer = await ask('work-content', view);
    // J103: 18 at 9.6 for 8.7 s; J501: 20 at 5.4 for 5.0 s.
    expect(out(answer, 'difference').x).toBeCloseTo(18 * 0.9 + 20 * 0.4, 9);
    expect(out(answer, 'difference').decision).toBeDefined();
    const asRecorded = out(await ask('install-time', view), 'time').x;
    const motions = out(await ask('element-time', view, 'J112'), 'time').x;
    const turning = out(await ask('run-down-time', view, 'J112'), 'time').x;
    expect(turning).toBeCloseTo((9 / 1) * (60 / 500), 9);
    expect(out(answer, 'hands').x).toBeCloseTo(
      asRecorded + 24.2 + 4 * (motions + turning - 4.2),
      6,
    );
  });
});

describe('slips in a register', () => {
  const joins = (joint: string, role: string, to: string | null, words?: string): Entry => ({
    v: 1,
    e: 'link.add',
    link: {
      id: `${joint} ${role} ${words ?? to}`,
      kind: 'joins',
      from: joint,
      to,
      role,
      ...(words === undefined ? {} : { words }),
    },
  });
  const study = (...more: readonly Entry[]): StudyView =>
    studyOf(
      node('p1', 'van'),
      node('j1', 'van', 'joint'),
      read('j1', 'count.holes', count(4), { how: 'seen' }),
      read('j1', 'spec', text('M6x20'), { how: 'seen' }),
      ...more,
    );

  it('a joint to a part that is not there is found with its place and words', async () => {
    const view = study(joins('j1', 'from', 'p1'), joins('j1', 'to', null, '99-001'));
    expect(found(await ask('joint-census', view), 'joint-end-unknown')).toMatchObject([
      { place: { subject: 'J1 name of j1', column: 'to' }, value: '99-001' },
    ]);
  });

  it('a joint with nothing on one side is found, and one whose part was retired', async () => {
    const open = await ask('joint-census', study(joins('j1', 'from', 'p1')));
    expect(found(open, 'joint-end-open')).toHaveLength(1);
    const view = study(joins('j1', 'from', 'p1'), joins('j1', 'to', 'p1'));
    const gone = later(view, { v: 1, e: 'node.retire', id: 'p1', why: 'never there' });
    expect(found(await ask('joint-census', gone), 'joint-end-unknown')).toHaveLength(2);
  });

  it('bags of a joint count together; one of another size is found', async () => {
    const bag = (id: string, n: number, spec: string): Entry[] => [
      node(id, 'van', 'bag'),
      { v: 1, e: 'link.add', link: { id: `${id}-keeps`, kind: 'keeps', from: id, to: 'j1' } },
      read(id, 'count.bag', count(n), { how: 'seen' }),
      read(id, 'spec', text(spec), { how: 'seen' }),
    ];
    const sides = [joins('j1', 'from', 'p1'), joins('j1', 'to', 'van')];
    const two = await ask(
      'joint-census',
      study(...sides, ...bag('b1', 3, 'M6x20'), ...bag('b2', 1, 'M6x20')),
    );
    expect(out(two, 'apart').x).toBe(0);
    expect(two.findings).toEqual([]);
    const other = await ask('joint-census', study(...sides, ...bag('b1', 4, 'M8x20')));
    expect(found(other, 'bag-of-another-size').map((f) => f.value)).toEqual([
      'M8x20 in the bag, M6x20 by the joint',
    ]);
  });

  it('a torque of a fastener without a size is found', async () => {
    const view = studyOf(
      node('j1', 'van', 'joint'),
      read('j1', 'count.holes', count(2), { how: 'seen' }),
      read('j1', 'type', text('screw'), { how: 'seen' }),
      read('j1', 'torque.specified', {
        t: 'scalar',
        kind: 'torque',
        x: 9,
        spread: { s: 'exact' },
      }),
    );
    expect(found(await ask('fastener-census', view), 'torque-without-size')).toMatchObject([
      { place: { subject: 'J1 name of j1', property: 'torque.specified' }, value: '9 N·m' },
    ]);
  });
});
