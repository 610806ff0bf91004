import { formulaOf } from '../../../src/formula/index.ts';
import { addingUp } from '../../../src/quantity/index.ts';
import { placeText } from '../../../src/study/index.ts';
import { FormulaShown } from '../parts/formula-shown.tsx';
import { NumberShown } from '../parts/number.tsx';
import { OutNumber } from '../parts/out-number.tsx';
import type { AnswerSheet, SheetOut } from '../worker/answer-sheet.ts';
import { DecisionShown } from './decision-shown.tsx';

export interface OutsTableProps {
  readonly sheet: AnswerSheet;
  /** Output whose contributions are in sight. */
  readonly shown: string | undefined;
  readonly onShow: (output: string) => void;
}

/** The results: number, spread, unit, and the decision word where one applies. */
export const OutsTable = ({ sheet, shown, onShow }: OutsTableProps) => (
  <div className="table-scroll">
    <table className="outs">
      <caption className="heard">Results</caption>
      <thead>
        <tr>
          <th scope="col">result</th>
          <th scope="col">number</th>
          <th scope="col">word</th>
          <th scope="col">spread from</th>
        </tr>
      </thead>
      <tbody>
        {sheet.outs.map((out) => (
          <tr key={out.name} className={out.step ? 'step' : ''}>
            <th scope="row">
              {out.meaning} <FormulaShown formula={formulaOf(out.symbol)} />
            </th>
            <td>
              <OutCell sheet={sheet} out={out} />
            </td>
            <td>
              {out.decision && (
                <DecisionShown decision={out.decision} kind={out.kind} unit={out.unit} open />
              )}
              {!out.decision && out.u === 'incomplete' && <Incomplete out={out} />}
            </td>
            <td>
              <button
                type="button"
                aria-pressed={shown === out.name}
                onClick={() => onShow(out.name)}
              >
                {shown === out.name ? 'shown' : 'show'}
                <span className="heard">: where the spread of {out.meaning} comes from</span>
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

/** Of a study, the origin is a touch away; of bare values, all there is stands on the card. */
const OutCell = ({ sheet, out }: { readonly sheet: AnswerSheet; readonly out: SheetOut }) =>
  sheet.subject === undefined ? (
    <NumberShown shown={out} how="calculated" of={out.meaning} beside={addingUp(out, sheet.outs)} />
  ) : (
    <OutNumber found={{ sheet, out }} />
  );

function Incomplete({ out }: { readonly out: SheetOut }) {
  return (
    <details className="open">
      <summary>what it lacks</summary>
      <ul>
        {out.missing.map((p) => (
          <li key={placeText(p)}>missing: {placeText(p)}</li>
        ))}
        {out.unknownSpread.map((p) => (
          <li key={placeText(p)}>spread not known: {placeText(p)}</li>
        ))}
      </ul>
    </details>
  );
}
