import { DecisionShown } from '../answer/decision-shown.tsx';
import { OutNumber } from '../parts/out-number.tsx';
import type { AnswerSheet } from '../worker/answer-sheet.ts';

export interface ResultLinesProps {
  readonly sheet: AnswerSheet;
  /** Results by name; all that are no steps of the working when absent. */
  readonly names: readonly string[] | undefined;
}

/** Results one under another: what it is, the number with its spread, and its word. */
export function ResultLines({ sheet, names }: ResultLinesProps) {
  const outs = sheet.outs.filter((o) => (names ? names.includes(o.name) : !o.step));
  if (outs.length === 0) return null;
  return (
    <dl className="result-lines">
      {outs.map((out) => (
        <div key={out.name}>
          <dt>{out.meaning}</dt>
          <dd>
            <OutNumber found={{ sheet, out }} />
            {out.decision && (
              <DecisionShown
                decision={out.decision}
                kind={out.kind}
                unit={out.unit}
                says={out.decision.direction}
              />
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
