import { addingUp } from '../../../src/quantity/index.ts';
import { placeText } from '../../../src/study/index.ts';
import { type NumberProps, NumberShown } from '../parts/number.tsx';
import type { AnswerSheet } from '../worker/answer-sheet.ts';

/** Each step of the calculation with its symbol, number and formula. */
export const Working = ({ sheet }: { readonly sheet: AnswerSheet }) => (
  <div className="table-scroll">
    <table>
      <caption className="heard">Working</caption>
      <thead>
        <tr>
          <th scope="col">symbol</th>
          <th scope="col">what</th>
          <th scope="col">number</th>
          <th scope="col">from</th>
        </tr>
      </thead>
      <tbody>
        {sheet.steps.map((step) => (
          <tr key={`${step.symbol} ${step.meaning} ${step.shown}`}>
            <td className="formula">{step.symbol}</td>
            <th scope="row">{step.meaning}</th>
            <td>
              <NumberShown
                {...printedAs(step, sheet)}
                how={step.how ?? 'calculated'}
                of={step.meaning}
              />
            </td>
            <td>
              <span className="formula">{step.shown}</span>
              {step.place && step.shown !== placeText(step.place) && (
                <small> {placeText(step.place)}</small>
              )}
              {step.how === 'assumed' && <b className="open"> assumed</b>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

/**
 * A step that is a result has the same digits as the result; one that was given or read without
 * a spread says that.
 */
function printedAs(
  step: AnswerSheet['steps'][number],
  { outs }: AnswerSheet,
): Pick<NumberProps, 'shown' | 'beside'> {
  const out = outs.find((o) => o.symbol === step.symbol && o.x === step.x);
  if (out) return { shown: out, beside: addingUp(out, outs) };
  return { shown: { ...step, u: step.u === 'incomplete' && step.place ? 'unknown' : step.u } };
}
