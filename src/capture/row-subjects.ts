import {
  type Entry,
  type Finding,
  type Id,
  NODE_KINDS,
  type NodeKind,
  type NodeSpec,
} from '../study/index.ts';
import { note, type RowText, type Setup } from './form-reader.ts';
import type { Problem } from './problems.ts';

interface Made {
  readonly node: NodeSpec;
  readonly parentLabel: string;
  readonly row: number;
}

const isNodeKind = (word: string): word is NodeKind =>
  (NODE_KINDS as readonly string[]).includes(word);

/**
 * What the rows of a table of readings are about: nodes of the study, or nodes made for them
 * where a row says what kind of thing its subject is and to what it belongs.
 */
export class RowSubjects {
  readonly #setup: Setup;
  readonly #made = new Map<string, Made>();
  readonly #notes: Finding[] = [];
  readonly #noted = new Set<string>();

  constructor(setup: Setup) {
    this.#setup = setup;
  }

  get made(): number {
    return this.#made.size;
  }

  /** Entries that make the subjects that the study lacks, parents first. */
  entries = (): readonly Entry[] =>
    [...this.#made.values()].map(({ node }): Entry => ({ v: 1, e: 'node.add', node }));

  notes = (): readonly Finding[] => this.#notes;

  idOf = (label: string): Id | undefined =>
    this.#setup.request.view.find(label)?.id ?? this.#made.get(label)?.node.id;

  /** Makes the subject of a row where it is not there; the problem, if it can't be. */
  check(texts: RowText): Problem | undefined {
    const label = texts.text('subject');
    if (label === '')
      return texts.problem('subject', 'the row has no subject', 'Name the node it is about.');
    if (texts.text('parent') === label)
      return texts.problem('parent', `${label} is its own parent`, 'Name what it belongs to.');
    const kind = texts.text('kind');
    if (kind !== '' && !isNodeKind(kind))
      return texts.problem(
        'kind',
        `${kind} is no kind of subject`,
        `Write one of ${NODE_KINDS.join(', ')}.`,
      );
    const there = this.#setup.request.view.find(label);
    if (there) return this.#compare(texts, there);
    const made = this.#made.get(label);
    if (made) return this.#compare(texts, made.node) ?? sameParent(texts, made);
    return isNodeKind(kind) ? this.#make(texts, label, kind) : unknownSubject(texts, label);
  }

  #compare(texts: RowText, node: NodeSpec): Problem | undefined {
    const [kind, name] = [texts.text('kind'), texts.text('name')];
    if (kind !== '' && kind !== node.kind)
      return texts.problem(
        'kind',
        `${node.label} is a ${node.kind}`,
        'Correct the kind, or the subject.',
      );
    if (name !== '' && name !== node.name && !this.#noted.has(node.id)) {
      this.#noted.add(node.id);
      this.#notes.push(
        note(
          { file: this.#setup.request.file, row: texts.row, column: 'name' },
          `${node.label} is named "${node.name}" and keeps that name`,
          'Rename it in the study where the name of the table is the better one.',
          name,
        ),
      );
    }
    return undefined;
  }

  #make(texts: RowText, label: string, kind: NodeKind): Problem | undefined {
    const parentLabel = texts.text('parent');
    const root = this.#root();
    if (kind === 'vehicle' && parentLabel === '' && root)
      return texts.problem(
        'subject',
        `the study has its vehicle already: ${root.label}`,
        'Import this table into a study of its own, or correct the number of the vehicle.',
      );
    const parent = parentLabel === '' ? root?.id : this.idOf(parentLabel);
    if (parent === undefined && (parentLabel !== '' || kind !== 'vehicle'))
      return texts.problem(
        'parent',
        parentLabel === ''
          ? 'the study has no vehicle for it to belong to'
          : `there is no ${parentLabel} in the study or earlier in the table`,
        'Put the row of what it belongs to first.',
      );
    const name = texts.text('name') || label;
    const node = { id: this.#setup.request.ids(), kind, parent: parent ?? null, label, name };
    this.#made.set(label, { node, parentLabel, row: texts.row });
    return undefined;
  }

  #root = (): NodeSpec | undefined =>
    this.#setup.request.view.root() ??
    [...this.#made.values()].find(({ node }) => node.parent === null)?.node;
}

const sameParent = (texts: RowText, made: Made): Problem | undefined =>
  texts.text('parent') === '' || texts.text('parent') === made.parentLabel
    ? undefined
    : texts.problem(
        'parent',
        `row ${made.row} says that it belongs to ${made.parentLabel || 'the vehicle'}`,
        'Give it one parent.',
      );

const unknownSubject = (texts: RowText, label: string): Problem =>
  texts.problem(
    'subject',
    `there is no ${label} in the study`,
    'Correct the number, or give its kind and parent so that it is made.',
  );
