import { expect, it } from 'vitest';
import { sampleBySample } from '../../../bench/sample-by-sample.ts';
import { boundInStudy } from '../../../src/engine/ask.ts';
import { flatCells } from '../../../src/engine/flat-cells.ts';
import { loadQuestion, type Question, type TallyBody } from '../../../src/engine/index.ts';
import { Draws } from '../../../src/engine/monte-carlo/draws.ts';
import { samplerOf } from '../../../src/engine/monte-carlo/evaluate.ts';
import { rankedVariables } from '../../../src/engine/monte-carlo/leading.ts';
import { mass, node, point, read, studyOf } from '../../study/made-study.ts';

const ids = Array.from({ length: 300 }, (_, i) => `p${i}`);
const view = studyOf(
  ...ids.map((id) => node(id, 'van')),
  ...ids.flatMap((id, i) => [
    read(id, 'mass', mass(1 + i / 7, 0.1 + i / 1000), { id: `m ${id}` }),
    read(id, 'position', point([i / 100, -i / 300, 0.4], 0.01), { id: `p ${id}` }),
  ]),
);
const { question, questions } = await loadQuestion('mass-roll-up');

/** Results in columns, and by the question's own formulas one sample after the other. */
function bothWays(asked: Question) {
  const bound = boundInStudy(asked, new Map([...questions, [asked.id, asked]]), { view });
  const count = rankedVariables(bound, []).length;
  const { variables } = bound;
  const draws = new Draws({ variables, leading: [], count, seed: 3, size: 1000 });
  const sampling = samplerOf(asked, bound)(draws);
  let step = sampling.next();
  while (!step.done) step = sampling.next();
  const cells = bound.cells ?? flatCells(bound.tables.parts ?? [], variables);
  return { columns: step.value, single: sampleBySample(asked, cells, draws) };
}

function expectSame(asked: Question): void {
  const { columns, single } = bothWays(asked);
  for (const [k, column] of columns.entries())
    for (let s = 0; s < column.length; s++)
      expect(Math.abs((column[s] ?? 0) / (single[k]?.[s] ?? 1) - 1)).toBeLessThan(1e-9);
}

it('columns agree with single samples to 1e-9', () => {
  expectSame(question);
});

it('a formula that looks like a sum of products and bends somewhere else is called itself', () => {
  const body = question.body as TallyBody;
  // Above 40 kg, where the probes of the formula do not go for one argument of this size alone.
  const bent = (m: number): number => (m > 40 && m < 41 ? 2 * m : m);
  const terms = body.terms.map((term) => (term.name === 'mass' ? { ...term, each: bent } : term));
  const asked = { ...question, id: 'bent', body: { ...body, terms } };
  expectSame(asked);
  const [straight] = bothWays(question).columns;
  const [own] = bothWays(asked).columns;
  expect((own?.[0] ?? 0) - (straight?.[0] ?? 0)).toBeGreaterThan(100);
});
