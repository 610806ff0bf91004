/**
 * Every input that declares a direction moves the first output of its question that way, wherever
 * it is within its plausible range: never the other way, and really so over the whole of it. And
 * no question of costs answers from its own output.
 */
import { describe, expect, it } from 'vitest';
import { loadAll, type Question, type ScalarInput } from '../../src/engine/index.ts';
import { toSi } from '../../src/quantity/index.ts';
import { runPlain, slotsOf } from './plain-questions.ts';

const questions = [...(await loadAll())].filter(([, q]) =>
  q.inputs.some((i) => i.in === 'scalar' && i.moves),
);
const POINTS = 24;

/** Numbers across the plausible range, whole ones for counts; SI. */
function across({ range: [low, high], kind, unit, bounds }: ScalarInput): number[] {
  const from = bounds?.above === undefined ? low : Math.max(low, bounds.above);
  const steps = Array.from({ length: POINTS + 1 }, (_, i) => from + ((high - from) * i) / POINTS);
  const shown = kind === 'count' ? [...new Set(steps.map(Math.round))] : steps;
  return shown.map((x) => toSi(x, unit, kind));
}

/** First output with one input at each of these numbers. */
function costs(q: Question, input: string, at: readonly number[]): number[] {
  const slots = slotsOf(q);
  const numbers = slots.map((s) => s.x);
  const i = slots.findIndex((s) => s.input === input);
  const first = q.body.outputs[0]?.name ?? '';
  return at.map((x) => runPlain(q, numbers.with(i, x))[first] ?? Number.NaN);
}

const directed = questions.flatMap(([id, q]) =>
  q.inputs.flatMap((i) =>
    i.in === 'scalar' && i.moves ? [[id, i.name, i.moves, q, i] as const] : [],
  ),
);

describe('cost moves the way that is declared', () => {
  it('for a good many inputs of all process models', () => {
    expect(questions.filter(([, q]) => q.section.id === 'processes').length).toBeGreaterThanOrEqual(
      18,
    );
    expect(directed.length).toBeGreaterThan(250);
  });

  it.each(directed)('%s: with %s %s', (_id, name, moves, q, input) => {
    const found = costs(q, name, across(input)).filter(Number.isFinite);
    expect(found.length).toBeGreaterThan(1);
    const sign = moves === 'up' ? 1 : -1;
    const steps = found.slice(1).map((c, i) => sign * (c - (found[i] ?? 0)));
    const size = Math.max(...found.map(Math.abs));
    // Whole sets of tools are paid: more pieces a year may cost a set more, just beyond its life.
    const slack = ['volume', 'years'].includes(name) ? 0.2 * size : 1e-12 * size;
    expect(Math.min(...steps)).toBeGreaterThanOrEqual(-slack);
    expect(sign * ((found.at(-1) ?? 0) - (found[0] ?? 0))).toBeGreaterThan(0);
  });
});

it('no question of costs answers from its own output', async () => {
  const all = await loadAll();
  const reaches = (id: string, seen: readonly string[]): boolean =>
    (all.get(id)?.uses ?? []).some(
      (used) => seen[0] === used || (!seen.includes(used) && reaches(used, [...seen, used])),
    );
  const costly = [...all].filter(([, q]) => ['cost', 'processes'].includes(q.section.id));
  expect(costly.filter(([id]) => reaches(id, [id])).map(([id]) => id)).toEqual([]);
});
