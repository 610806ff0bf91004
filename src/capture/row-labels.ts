import type { StudyView } from '../study/index.ts';
import type { RowText } from './form-reader.ts';
import { LabelSet, labelDigest } from './label-set.ts';
import type { Problems } from './problems.ts';

/** More suspicions than this are not followed; far fewer can be told of. */
const MOST_SUSPECTS = 1000;

/** Holds that every row has a number of its own, which no node of the study has yet. */
export class RowLabels {
  readonly #view: StudyView;
  readonly #problems: Problems;
  readonly #seen = new LabelSet();
  /** Digests seen twice: of one label twice, or by rare chance of two. */
  readonly #suspects = new Set<number>();
  /** Rows of suspected labels, by label. */
  readonly #firstRow = new Map<string, number>();

  constructor(view: StudyView, problems: Problems) {
    this.#view = view;
    this.#problems = problems;
  }

  check(texts: RowText): void {
    const label = texts.text('number');
    if (label === '') {
      this.#problems.add(
        texts.problem('number', 'the row has no number', 'Give it a number of its own.'),
      );
      return;
    }
    if (!this.#seen.add(label) && this.#suspects.size < MOST_SUSPECTS)
      this.#suspects.add(labelDigest(label));
    if (this.#view.find(label)?.label === label)
      this.#problems.add(
        texts.problem(
          'number',
          `the number ${label} is in the study already`,
          'Take the row out, or give it another number; to change a value, correct or measure it again in the study.',
        ),
      );
  }

  get suspects(): boolean {
    return this.#suspects.size > 0;
  }

  look(texts: RowText): void {
    const label = texts.text('number');
    if (!this.suspects || label === '' || !this.#suspects.has(labelDigest(label))) return;
    const first = this.#firstRow.get(label);
    if (first === undefined) this.#firstRow.set(label, texts.row);
    else
      this.#problems.add(
        texts.problem(
          'number',
          `the number ${label} stands in row ${first} already`,
          'Give one of the two rows another number, or take it out.',
        ),
      );
  }
}
