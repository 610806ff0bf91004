import type { NodeKind, NodeSpec } from './entries.ts';
import type { Id } from './ids.ts';
import type { InForce, Missing } from './view.ts';

/** What changes touched: whose readings, and whether anything else that a calculation rests on. */
export interface Touched {
  readonly subjects: ReadonlySet<Id>;
  /** Tree, links, rates, causes, instruments, conditions or the header too. */
  readonly more: boolean;
}

/** Being filled while changes are applied. */
export class Touching implements Touched {
  readonly subjects = new Set<Id>();
  more = false;
}

/**
 * What views extended one from another share: values already worked out, and what each step
 * touched. It makes nothing new, it only saves work: a view folded anew begins a line of its own.
 */
export class Line {
  /** Cells in force by subject, then by property (in the header's condition) or by their full key. */
  readonly cells = new Map<Id, Map<string, InForce | Missing>>();
  readonly byKind = new Map<NodeKind, readonly NodeSpec[]>();
  readonly #steps: { readonly changes: number; readonly touched: Touched }[] = [];

  /** Drops what these changes made old, and remembers them; `changes` counts all of them by now. */
  step(touched: Touched, changes: number): void {
    if (touched.more) {
      this.cells.clear();
      this.byKind.clear();
    }
    for (const id of touched.subjects) this.cells.delete(id);
    this.#steps.push({ changes, touched });
  }

  /** All that was touched since the view of so many changes. */
  since(changes: number): Touched {
    const later = this.#steps.filter((s) => s.changes > changes).map((s) => s.touched);
    const [only, second] = later;
    if (only && !second) return only;
    return {
      subjects: new Set(later.flatMap((t) => [...t.subjects])),
      more: later.some((t) => t.more),
    };
  }
}
