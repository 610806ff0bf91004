import type { Value } from '../quantity/index.ts';
import {
  type Entry,
  type Finding,
  GATE_IDS,
  gatesNamed,
  type Id,
  type LinkSpec,
  type NodeKind,
  type NodeSpec,
} from '../study/index.ts';
import {
  type FormReader,
  openCondition,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import { listIn } from './list-in.ts';
import type { Problem } from './problems.ts';
import { RowReadings } from './row-readings.ts';

const TAKEN: ReadonlySet<NodeKind> = new Set(['part', 'assembly']);

/**
 * Steps of the removal plan: what comes off together, parts and assemblies by number, an assembly
 * standing for all below it, and what of it stays on. The step of raising the vehicle takes
 * nothing. Whether an order holds is for the balance on the hoist to find.
 */
export class RemovalsForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #readings: RowReadings;
  readonly #made = new Map<string, { readonly node: NodeSpec; readonly row: number }>();

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
    this.#readings = new RowReadings(setup);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problem =
      this.#wrongNumber(texts) ??
      this.#wrongList(texts, 'takes') ??
      this.#wrongList(texts, 'without') ??
      this.#wrongAfter(texts) ??
      wrongGate(texts);
    if (problem) this.#setup.problems.add(problem);
    else this.#keep(texts);
    this.#readings.check(cells, row);
  }

  #wrongNumber(texts: RowText): Problem | undefined {
    const label = texts.text('number');
    const earlier = this.#made.get(label)?.row;
    if (label === '')
      return texts.problem('number', 'the step has no number', 'Give it a number of its own.');
    if (earlier !== undefined)
      return texts.problem(
        'number',
        `the step ${label} stands in row ${earlier} already`,
        'Give one of the two another number.',
      );
    if (this.#setup.request.view.find(label))
      return texts.problem(
        'number',
        `${label} is in the study already`,
        'Give the step another number, or take its row out.',
      );
    return undefined;
  }

  #wrongList(texts: RowText, field: 'takes' | 'without'): Problem | undefined {
    const wrong = listIn(texts.text(field)).find((name) => this.#taken(name) === undefined);
    if (wrong === undefined) return undefined;
    const node = this.#setup.request.view.find(wrong);
    return texts.problem(
      field,
      node ? `${wrong} is a ${node.kind}` : `there is no ${wrong} in the study`,
      'Name parts or assemblies by number, parted by semicolons; import the parts first.',
    );
  }

  #wrongAfter(texts: RowText): Problem | undefined {
    const lost = listIn(texts.text('after')).find((name) => this.#step(name) === undefined);
    return lost === undefined
      ? undefined
      : texts.problem(
          'after',
          `there is no step ${lost} in the study or earlier in the table`,
          'Correct the number, or put the row of that step first.',
        );
  }

  #taken(label: string): Id | undefined {
    const node = this.#setup.request.view.find(label);
    return node && TAKEN.has(node.kind) ? node.id : undefined;
  }

  #step(label: string): Id | undefined {
    const node = this.#setup.request.view.find(label);
    return node?.kind === 'removal' ? node.id : this.#made.get(label)?.node.id;
  }

  #keep(texts: RowText): void {
    const { ids, view } = this.#setup.request;
    const [label, name] = [texts.text('number'), texts.text('name')];
    const parent = view.root()?.id ?? null;
    const node = { id: ids(), kind: 'removal' as const, parent, label, name: name || label };
    this.#made.set(label, { node, row: texts.row });
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}

  opening(): readonly Entry[] {
    const { condition, request } = this.#setup;
    return [
      ...openCondition(condition, request.view),
      ...this.#readings.opening(),
      ...[...this.#made.values()].map(({ node }): Entry => ({ v: 1, e: 'node.add', node })),
    ];
  }

  entries = (chunk: RowChunk): readonly Entry[] =>
    chunk.rows.flatMap((cells, i) => this.#row(cells, chunk.firstRow + i));

  #row(cells: readonly string[], row: number): Entry[] {
    const texts = this.#texts(cells, row);
    const id = this.#made.get(texts.text('number'))?.node.id;
    if (id === undefined) throw new Error(`row ${row} passed the check and can not be read`);
    const taken = (name: string): Id | null => this.#taken(name) ?? null;
    return [
      ...listIn(texts.text('takes')).map((name) => this.#takes(id, taken(name), name)),
      ...listIn(texts.text('without')).map((name) =>
        this.#takes(id, taken(name), name, { role: 'without' }),
      ),
      ...listIn(texts.text('after')).map((name) =>
        this.#link({ kind: 'blocks', from: this.#step(name) ?? '', to: id }),
      ),
      ...this.#readings.entries(id, cells, row),
    ];
  }

  #takes = (from: Id, to: Id | null, words: string, role: Pick<LinkSpec, 'role'> = {}): Entry =>
    this.#link({ kind: 'takes', from, to, words, ...role });

  #link = (link: Omit<LinkSpec, 'id'>): Entry => ({
    v: 1,
    e: 'link.add',
    link: { id: this.#setup.request.ids(), ...link },
  });

  values = (cells: readonly string[], row: number): ReadonlyMap<number, Value> =>
    this.#readings.values(cells, row);

  counts = (): Readonly<Record<string, number>> => ({
    'steps of the plan': this.#made.size,
    ...this.#readings.counts,
  });

  notes = (): readonly Finding[] => [];
}

function wrongGate(texts: RowText): Problem | undefined {
  const wrong = listIn(texts.text('gates')).find((word) => gatesNamed(word).length === 0);
  return wrong === undefined
    ? undefined
    : texts.problem('gates', `there is no gate ${wrong}`, `Name some of: ${GATE_IDS.join('; ')}.`);
}
