import type { Value } from '../quantity/index.ts';
import type { Entry, Finding, Id, LinkSpec, NodeKind, NodeSpec } from '../study/index.ts';
import {
  type FormReader,
  type RowChunk,
  type RowText,
  rowTexts,
  type Setup,
} from './form-reader.ts';
import { listIn } from './list-in.ts';
import type { Problem } from './problems.ts';

/** What can be weighed as a module, and what can be in one. */
const MODULES: ReadonlySet<NodeKind> = new Set(['assembly', 'trial']);
const HELD: ReadonlySet<NodeKind> = new Set(['part', 'assembly']);

/**
 * What was in a module when it was weighed in one piece: numbers of parts, or of assemblies for
 * all that is below them, several parted by semicolons, and what of it was not. A module that the
 * study lacks is made a trial; its mass is a reading of its own.
 */
export class ModulesForm implements FormReader {
  readonly #setup: Setup;
  readonly #texts: (cells: readonly string[], row: number) => RowText;
  readonly #rows = new Map<string, number>();
  readonly #made = new Map<string, NodeSpec>();

  constructor(setup: Setup) {
    this.#setup = setup;
    this.#texts = rowTexts(setup.mapping);
  }

  check(cells: readonly string[], row: number): void {
    const texts = this.#texts(cells, row);
    const problem =
      this.#wrongModule(texts) ??
      this.#wrongList(texts, 'holds') ??
      this.#wrongList(texts, 'without');
    if (problem) this.#setup.problems.add(problem);
    else this.#keep(texts);
  }

  #wrongModule(texts: RowText): Problem | undefined {
    const label = texts.text('module');
    const earlier = this.#rows.get(label);
    const node = this.#setup.request.view.find(label);
    if (label === '')
      return texts.problem('module', 'the row names no module', 'Name what was weighed.');
    if (earlier !== undefined)
      return texts.problem(
        'module',
        `the module ${label} stands in row ${earlier} already`,
        'List all that it holds in one row, parted by semicolons.',
      );
    if (node && !MODULES.has(node.kind))
      return texts.problem(
        'module',
        `${label} is a ${node.kind} and can not be weighed as a module`,
        'Name an assembly, or give the module a name of its own.',
      );
    if (node && this.#setup.request.view.links('weighed-with', node.id).length > 0)
      return texts.problem(
        'module',
        `the study has a list of what ${label} holds already`,
        'Take the row out, or give the module another name.',
      );
    return undefined;
  }

  #wrongList(texts: RowText, field: 'holds' | 'without'): Problem | undefined {
    const names = listIn(texts.text(field));
    if (field === 'holds' && names.length === 0)
      return texts.problem('holds', 'the module holds nothing', 'List its parts, parted by ;.');
    const wrong = names.find((name) => this.#held(name) === undefined);
    if (wrong === undefined) return undefined;
    const node = this.#setup.request.view.find(wrong);
    return texts.problem(
      field,
      node ? `${wrong} is a ${node.kind}` : `there is no ${wrong} in the study`,
      'Name parts or assemblies by number, parted by semicolons; import the parts first.',
    );
  }

  #held(label: string): Id | undefined {
    const node = this.#setup.request.view.find(label);
    return node && HELD.has(node.kind) ? node.id : undefined;
  }

  #keep(texts: RowText): void {
    const { ids, view } = this.#setup.request;
    const label = texts.text('module');
    this.#rows.set(label, texts.row);
    if (view.find(label)) return;
    const parent = view.root()?.id ?? null;
    this.#made.set(label, { id: ids(), kind: 'trial', parent, label, name: label });
  }

  needsLook = (): boolean => false;
  look(): void {}
  settle(): void {}
  opening = (): readonly Entry[] =>
    [...this.#made.values()].map((node): Entry => ({ v: 1, e: 'node.add', node }));

  entries = (chunk: RowChunk): readonly Entry[] =>
    chunk.rows.flatMap((cells, i) => this.#module(this.#texts(cells, chunk.firstRow + i)));

  #module(texts: RowText): Entry[] {
    const label = texts.text('module');
    const from = this.#setup.request.view.find(label)?.id ?? this.#made.get(label)?.id;
    if (from === undefined)
      throw new Error(`row ${texts.row} passed the check and can not be read`);
    return [
      ...listIn(texts.text('holds')).map((name) => this.#link(from, name)),
      ...listIn(texts.text('without')).map((name) => this.#link(from, name, 'without')),
    ];
  }

  #link(from: Id, name: string, role?: string): Entry {
    const { ids } = this.#setup.request;
    const link: LinkSpec = {
      id: ids(),
      kind: 'weighed-with',
      from,
      to: this.#held(name) ?? null,
      ...(role === undefined ? {} : { role }),
      words: name,
    };
    return { v: 1, e: 'link.add', link };
  }

  values = (): ReadonlyMap<number, Value> => new Map();
  counts = (): Readonly<Record<string, number>> => ({ modules: this.#rows.size });
  notes = (): readonly Finding[] => [];
}
