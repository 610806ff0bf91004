import { formUncertainty } from '../../quantity/index.ts';
import type { FigureNumber, Graph, GraphEdge } from '../figure.ts';
import type { BoundLook, Cell, FoundRow, Looked } from '../method.ts';
import { linearised } from '../propagate.ts';

/** More steps than these are read better in the table beside. */
const MOST = 60;

/** One step of a way, its time, and the steps that must be done before it, by place. */
interface Step {
  readonly row: FoundRow;
  readonly time: FigureNumber | undefined;
  readonly after: readonly number[];
}

/** What must be done before what, with the time of each step, and the longest chain of them. */
export function lookAtWay({ tables }: BoundLook): Looked {
  const steps = stepsOf(tables.steps ?? []);
  if (steps.length > MOST || steps.every((s) => s.after.length === 0)) return {};
  const chain = longestChain(steps);
  const id = (i: number): string => String(i);
  const edges = steps.flatMap(({ after }, i) =>
    after.map((before): GraphEdge => {
      const strong = chain.has(i) && chain.has(before);
      return { from: id(before), to: id(i), ...(strong ? { strong } : {}) };
    }),
  );
  const graph: Graph = {
    f: 'graph',
    title: 'What must be done before what',
    alt: 'Steps from above to below, each under those it waits for; the chain that takes longest is drawn bold.',
    kind: 'time',
    unit: 's',
    nodes: steps.map(({ row, time }, i) => ({
      id: id(i),
      label: row.terms.doing?.text || row.label,
      ...(time ? { number: time } : {}),
      ...(chain.has(i) ? { strong: true } : {}),
    })),
    edges,
  };
  return { figures: [graph] };
}

function stepsOf(rows: readonly FoundRow[]): Step[] {
  return rows.map((row) => {
    const names = (row.terms.after?.text ?? '').split(', ').filter((name) => name !== '');
    const after = names.flatMap((name) => {
      const at = rows.findIndex((other) => other !== row && isNamed(other, name));
      return at < 0 ? [] : [at];
    });
    return { row, after, time: timeOf(row) };
  });
}

/** Whether a step goes by a label: in a study by that of its node, else by its first words. */
const isNamed = ({ label, terms }: FoundRow, name: string): boolean =>
  [label, terms.doing?.text ?? ''].some((text) => text === name || text.startsWith(`${name} `));

/** Time of a step, all elements that are opened, with its spread; undefined where it is missing. */
function timeOf({ cells }: FoundRow): FigureNumber | undefined {
  const factors = [cells.count, cells.share, cells.undo].flatMap((c): Cell[] =>
    c && !('missing' in c) ? [c] : [],
  );
  if (factors.length < 3) return undefined;
  const { form } = linearised(
    (count, share, each) => (count ?? 0) * (share ?? 0) * (each ?? 0),
    factors.map((c) => c.form),
  );
  const u = formUncertainty(form);
  const isWhole = factors.every((c) => c.unknownSpread !== true);
  return isWhole ? { x: form.x, u } : { x: form.x, u: 'incomplete', knownU: u };
}

/** Places of the steps on the chain that takes longest; empty where steps wait in a ring. */
function longestChain(steps: readonly Step[]): ReadonlySet<number> {
  const ends = new Map<number, { readonly time: number; readonly from: number | undefined }>();
  const waiting = new Set(steps.keys());
  for (let isNew = true; isNew; ) {
    isNew = false;
    for (const i of waiting) {
      const step = steps[i];
      if (!step || step.after.some((before) => waiting.has(before))) continue;
      const from = latest(step.after, ends);
      const before = from === undefined ? 0 : (ends.get(from)?.time ?? 0);
      ends.set(i, { time: before + (step.time?.x ?? 0), from });
      waiting.delete(i);
      isNew = true;
    }
  }
  const chain = new Set<number>();
  if (waiting.size > 0) return chain;
  for (let at = latest([...ends.keys()], ends); at !== undefined; at = ends.get(at)?.from)
    chain.add(at);
  return chain;
}

const latest = (
  among: readonly number[],
  ends: ReadonlyMap<number, { readonly time: number }>,
): number | undefined =>
  among.reduce<number | undefined>(
    (best, i) =>
      best === undefined || (ends.get(i)?.time ?? 0) >= (ends.get(best)?.time ?? 0) ? i : best,
    undefined,
  );
