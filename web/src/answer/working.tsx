import { workedLines } from '../../../src/formula/index.ts';
import { addingUp } from '../../../src/quantity/index.ts';
import { placeText } from '../../../src/study/index.ts';
import { FormulaShown } from '../parts/formula-shown.tsx';
import { type NumberProps, NumberShown } from '../parts/number.tsx';
import { nominalText } from '../parts/number-text.ts';
import type { AnswerSheet } from '../worker/answer-sheet.ts';

type Step = AnswerSheet['steps'][number];

/** Each step of the calculation with its symbol, number and formula, numbers put in. */
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
        {linesOf(sheet).map((line) => (
          <Line key={`${line.step.symbol} ${line.step.meaning} ${line.step.shown}`} {...line} />
        ))}
      </tbody>
    </table>
  </div>
);

/** Steps as printed, and in mathematics with each other's numbers put in. */
function linesOf(sheet: AnswerSheet) {
  const printed = sheet.steps.map((step) => printedAs(step, sheet));
  const worked = workedLines(
    sheet.steps.map(({ symbol, shown, place }, i) => ({
      ...{ symbol, shown, isFormula: place === undefined },
      number: nominalText(printed[i]?.shown, printed[i]?.beside),
    })),
  );
  return sheet.steps.flatMap((step, i) => {
    const [own, set] = [printed[i], worked[i]];
    return own && set ? [{ step, printed: own, worked: set }] : [];
  });
}

type LineProps = ReturnType<typeof linesOf>[number];

/** A step; under it, over the whole width, its formula with the numbers put in. */
const Line = ({ step, printed, worked }: LineProps) => (
  <>
    <tr className={worked.numbers ? 'goes-on' : ''}>
      <td>
        <FormulaShown formula={worked.symbol} />
      </td>
      <th scope="row">{step.meaning}</th>
      <td>
        <NumberShown {...printed} how={step.how ?? 'calculated'} of={step.meaning} />
      </td>
      <td>{worked.formula ? <FormulaShown formula={worked.formula} /> : <Read step={step} />}</td>
    </tr>
    {worked.numbers && (
      <tr>
        <td className="put-in" colSpan={4}>
          <FormulaShown formula={worked.symbol} /> = <FormulaShown formula={worked.numbers} />
        </td>
      </tr>
    )}
  </>
);

/** What was read, and where. */
const Read = ({ step }: { readonly step: Step }) => (
  <>
    {step.shown}
    {step.place && step.shown !== placeText(step.place) && <small> {placeText(step.place)}</small>}
    {step.how === 'assumed' && <b className="open"> assumed</b>}
  </>
);

/**
 * A step that is a result has the same digits as the result; one that was given or read without
 * a spread says that.
 */
function printedAs(step: Step, { outs }: AnswerSheet): Pick<NumberProps, 'shown' | 'beside'> {
  const out = outs.find((o) => o.symbol === step.symbol && o.x === step.x);
  if (out) return { shown: out, beside: addingUp(out, outs) };
  return { shown: { ...step, u: step.u === 'incomplete' && step.place ? 'unknown' : step.u } };
}
