import { addingUp } from '../../../src/quantity/index.ts';
import { NumberShown } from './number.tsx';
import type { Shown } from './number-text.ts';
import type { OutFound } from './use-out.ts';

export interface OutNumberProps {
  readonly found: OutFound;
  /** What it is compared with; without it, the outputs that it adds up with. */
  readonly beside?: readonly Shown[];
  readonly size?: 'large';
}

/** An output of the open study, its origin one touch away. */
export const OutNumber = ({ found: { sheet, out }, beside, size }: OutNumberProps) => (
  <NumberShown
    shown={out}
    how="calculated"
    of={out.meaning}
    beside={beside ?? addingUp(out, sheet.outs)}
    {...(size ? { size } : {})}
    why={{ of: 'out', question: sheet.question, subject: sheet.subject ?? '', output: out.name }}
  />
);
