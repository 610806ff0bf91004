import { placeText } from '../../../src/study/index.ts';
import { NumberShown } from '../parts/number.tsx';
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
              <NumberShown shown={step} how={step.how ?? 'calculated'} of={step.meaning} />
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
