/**
 * Question fastening-comparison: costs of both sides of a joint and of both services, own inputs
 * worked by hand; with one figure open there is no comparison. Common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

type Row = Readonly<Record<string, string>>;

const A: Row = {
  count: '60',
  price: 'exactly 0.05 {u}',
  nutPrice: 'exactly 0.10 {u}',
  nutTime: 'exactly 3 s',
  capital: 'exactly 0.30 {u}',
  assembly: 'exactly 5 s',
  removal: 'exactly 4 s',
  renewal: 'exactly 2 {u}',
  parting: 'exactly 60 s',
  visits: 'exactly 0.5',
  notApplicable: '',
};
const CLIPS: Row = {
  ...A,
  count: '50',
  price: 'exactly 0.12 {u}',
  assembly: 'exactly 2 s',
  removal: 'exactly 2 s',
};
const { nutPrice: _price, nutTime: _time, ...oneSided } = CLIPS;
const B: Row = { ...oneSided, notApplicable: 'nutPrice nutTime' };

const compare = async (...fastenings: readonly Row[]) =>
  askWritten((await loadQuestion('fastening-comparison')).question, {
    pair: '',
    fastenings,
    labour: 'exactly 36 {u}/h',
  });

describe('two fastenings', () => {
  it('cost what their parts, work, capital and visits come to', async () => {
    const answer = await compare(A, B);
    // 60 (0.05 + 0.10) + 0.30 + 0.01 · 60 (5 + 3) + 0.5 (0.01 (60 (4 + 5) + 60) + 2)
    expect(out(answer, 'first').x).toBeCloseTo(9 + 0.3 + 4.8 + 0.5 * (6 + 2), 9);
    // 50 · 0.12 + 0.30 + 0.01 · 50 · 2 + 0.5 (0.01 (50 (2 + 2) + 60) + 2)
    expect(out(answer, 'second').x).toBeCloseTo(6 + 0.3 + 1 + 0.5 * (2.6 + 2), 9);
    expect(out(answer, 'difference').x).toBeCloseTo(9.6 - 18.1, 9);
    expect(out(answer, 'assembly').x).toBeCloseTo(50 * 2 - 60 * 8, 9);
    expect(answer.findings).toEqual([]);
  });

  it.each([
    ['nutPrice', 'nut side'],
    ['nutTime', 'nut side'],
    ['capital', 'capital'],
    ['assembly', 'assembly'],
    ['removal', 'removal'],
    ['renewal', 'renewal'],
    ['parting', 'parting'],
  ])('are not compared while %s is open', async (name, about) => {
    const { [name]: _open, ...rest } = A;
    const answer = await compare(rest, B);
    expect(Object.keys(answer.outs)).toEqual([]);
    const open = answer.findings.filter((f) => f.code === 'fastening-open');
    expect(open).toHaveLength(1);
    expect(open[0]?.place).toMatchObject({
      subject: 'fastenings 1',
      property: `fastening.${name}`,
    });
    expect(answer.detail?.rows[0]?.[3]).toBe(about);
    const closed = await compare({ ...rest, notApplicable: name }, B);
    expect(out(closed, 'difference').decision).toBeDefined();
  });

  it('are compared though a third one is open, which is named', async () => {
    const { capital: _open, ...third } = A;
    const answer = await compare(A, B, third);
    expect(answer.outs.difference).toBeDefined();
    expect(answer.findings.map((f) => [f.code, f.place.subject])).toEqual([
      ['fastening-open', 'fastenings 3'],
    ]);
  });

  it('take two', async () => {
    const answer = await compare(A);
    expect(answer.outs.difference).toBeUndefined();
    expect(answer.findings.map((f) => f.code)).toContain('fastening-open');
  });

  it('share the rate of labour: its spread counts in the difference of their work only', async () => {
    const { question } = await loadQuestion('fastening-comparison');
    const same = { ...A, count: '60' };
    const answer = askWritten(question, {
      pair: '',
      fastenings: [A, same],
      labour: '36 ± 6 {u}/h',
    });
    expect(out(answer, 'difference').u).toBe(0);
    expect(out(answer, 'first').u).toBeGreaterThan(0.5);
  });
});
