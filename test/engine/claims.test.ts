import { describe, expect, it } from 'vitest';
import { answerStudy, claimStates, loadAll, subjectsFor } from '../../src/engine/index.ts';
import type { Claim, Entry, Tie } from '../../src/study/index.ts';
import { count, later, mass, node, read, scalar, studyOf } from '../study/made-study.ts';

const questions = await loadAll();

const heard: Claim = {
  ...{ id: 'c1', words: 'that bracket is heavy', how: 'seen', by: 'R. Example' },
  ...{ heard: '2026-01-05T08:00:00', about: ['p1'], evidence: [] },
};
const claim: Entry = { v: 1, e: 'claim.put', claim: heard };
const tied = (value: number, more: Partial<Tie> = {}): Entry => ({
  ...{ v: 1, e: 'claim.tie' },
  tie: {
    ...{ id: 't1', claim: 'c1', question: 'mass-roll-up', subject: 'a1', output: 'mass' },
    test: { is: 'at least', value, asWritten: `${value} kg` },
    ...more,
  },
});
const record = [node('a1', 'van', 'assembly'), node('p1', 'a1'), claim];
const weighed = [...record, read('p1', 'mass', mass(10, 0.5))];
const stateOf = (...entries: Entry[]) => {
  const [state, ...more] = claimStates(studyOf(...entries), questions);
  if (!state || more.length > 0) throw new Error('one claim expected');
  return state;
};

describe('a claim', () => {
  it('is open until it is tied', () => {
    expect(stateOf(...weighed)).toMatchObject({
      ...{ state: 'open', lacks: ['it is not tied to a question yet'] },
    });
  });

  it.each([
    [8.9, 'holds'],
    [9.5, 'not proven'],
    [10.5, 'not proven'],
    [11.1, 'fails'],
  ])('that it is at least %f kg, being 10.0 ± 0.5, is answered: %s', (value, word) => {
    const state = stateOf(...weighed, tied(value));
    expect(state).toMatchObject({ state: 'answered', lacks: [], decision: { word, u: 0.5 } });
    expect(state.decision?.d).toBeCloseTo(10 - value, 9);
    expect(state.out?.name).toBe('mass');
  });

  it('that it is at most so much has the margin the other way round', () => {
    const test = { is: 'at most', value: 11.1, asWritten: '11.1 kg' } as const;
    expect(stateOf(...weighed, tied(0, { test })).decision).toMatchObject({ word: 'holds' });
  });

  it('about counted things holds when there are exactly as many', () => {
    const joints = [
      node('j1', 'a1', 'joint'),
      read('j1', 'count.holes', count(62)),
      tied(62, { question: 'joint-census', subject: 'van', output: 'elements' }),
    ];
    expect(stateOf(...record, ...joints).decision).toMatchObject({ word: 'holds', d: 0, u: 0 });
  });

  it('is open while a reading is missing, and says which', () => {
    const state = stateOf(...record, tied(5));
    expect(state.state).toBe('open');
    expect(state.decision).toBeUndefined();
    expect(state.lacks.join()).toContain('P1 name of p1');
  });

  it('is open while a spread is not known', () => {
    const state = stateOf(...record, read('p1', 'mass', mass(10)), tied(5));
    expect(state).toMatchObject({ state: 'open', out: { x: 10, u: 'incomplete' } });
    expect(state.decision).toBeUndefined();
  });

  it('tied to what is not there is open, and does not stop the others', () => {
    const gone: Entry = { v: 1, e: 'node.retire', id: 'a1', why: 'counted twice' };
    for (const entries of [
      [...weighed, tied(5), gone],
      [...weighed, tied(5, { question: 'no-such-question' })],
      [...weighed, tied(5, { subject: 'nowhere' })],
      [...weighed, tied(5, { output: 'colour' })],
      [...weighed, tied(5, { question: 'pack-energy-density', subject: 'p1', output: 'volume' })],
    ]) {
      const state = stateOf(...entries);
      expect(state.state).toBe('open');
      expect(state.lacks.join()).not.toBe('');
    }
  });

  it('goes by its latest tie; untied or withdrawn it says so', () => {
    const view = studyOf(...weighed, tied(5), tied(20, { id: 't2' }));
    const word = (v: typeof view) => claimStates(v, questions).map((s) => s.decision?.word);
    expect(word(view)).toEqual(['fails']);
    expect(word(later(view, { v: 1, e: 'claim.untie', id: 't2' }))).toEqual(['holds']);
    const again = studyOf(...weighed, tied(5), { v: 1, e: 'claim.withdraw', id: 'c1', why: 'x' });
    expect(word(again)).toEqual([]);
  });
});

describe('a whole study', () => {
  it('is asked what it can be asked, of what has the numbers', () => {
    const energy = scalar('energy', 2e8, 1e6);
    const view = studyOf(
      ...weighed,
      tied(5),
      node('a2', 'van', 'assembly'),
      node('p2', 'a2'),
      read('p2', 'mass', mass(400, 1)),
      read('a2', 'packEnergy', energy),
      ...['length', 'width', 'height'].map((s) =>
        read('a2', `envelope.${s}`, scalar('length', 1, 0.001)),
      ),
    );
    const pack = questions.get('pack-energy-density');
    expect(pack && subjectsFor(pack, questions, view)).toEqual(['a2']);
    const shares: number[] = [];
    const all = answerStudy(view, questions, { run: { tick: (share) => void shares.push(share) } });
    const asked = all.answers.map((a) => a.question);
    expect(asked).toContain('mass-roll-up');
    expect(asked.filter((id) => id === 'pack-energy-density')).toHaveLength(1);
    expect(all.claims).toMatchObject([{ state: 'answered', decision: { word: 'holds' } }]);
    expect(shares.at(-1)).toBe(1);
  });
});
