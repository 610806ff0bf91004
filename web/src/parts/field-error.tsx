import type { Refusal } from '../../../src/study/index.ts';

/** Marks a field whose content is objected to. */
export const invalid = (is: unknown) => (is ? { 'aria-invalid': true as const } : {});

/** What is wrong with a field and what to do, below it. */
export const Wrong = ({ refusal }: { readonly refusal: Refusal | undefined }) =>
  refusal && (
    <small className="open" role="alert">
      {refusal.why}. {refusal.next}
    </small>
  );
