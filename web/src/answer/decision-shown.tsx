import type { Decision } from '../../../src/engine/index.ts';
import type { Kind } from '../../../src/quantity/index.ts';
import { numberLine } from '../parts/number-text.ts';

export interface DecisionShownProps {
  readonly decision: Decision;
  readonly kind: Kind;
  readonly unit: string;
  readonly open?: boolean;
  /** What the word comes to here; the word itself when absent. */
  readonly says?: string | undefined;
  /** Marked as open business. */
  readonly isOpen?: boolean;
}

/** A decision word; the rule and the numbers behind it are a touch away. */
export function DecisionShown(props: DecisionShownProps) {
  const { decision, kind, unit, open = false, says, isOpen = false } = props;
  const { word, d, u, rule } = decision;
  return (
    <details className={`decision ${isOpen ? 'open' : ''}`} open={open}>
      <summary>{says ?? word}</summary>
      <p>
        <b>{word}</b>: {numberLine({ x: d, u, kind, unit })} against zero. Rule: {rule}.
      </p>
    </details>
  );
}
