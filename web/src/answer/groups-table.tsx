import { numberLine, numberText } from '../parts/number-text.ts';
import type { AnswerSheet, GroupTerm } from '../worker/answer-sheet.ts';

/** Sums of a tally, group by group. */
export function GroupsTable({ sheet }: { readonly sheet: AnswerSheet }) {
  if (!sheet.groups) return null;
  return (
    <div className="table-scroll">
      <table>
        <caption>By {sheet.groupedBy ?? 'group'}, with what of the spread is known</caption>
        <thead>
          <tr>
            <th scope="col">{sheet.groupedBy ?? 'group'}</th>
            <th scope="col" className="num">
              rows
            </th>
            <th scope="col" className="num">
              missing
            </th>
            {sheet.groupTerms.map((term) => (
              <th scope="col" className="num" key={term.name}>
                {term.shown}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sheet.groups.map((group) => (
            <tr key={group.group}>
              <th scope="row">{group.group === '' ? 'none' : group.group}</th>
              <td className="num">{group.rows}</td>
              <td className={group.missing > 0 ? 'num open' : 'num'}>{group.missing}</td>
              {sheet.groupTerms.map((term) => (
                <td className="num" key={term.name}>
                  {termText(term, group.terms[term.name])}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const termText = (
  { kind, unit }: GroupTerm,
  sum: { readonly x: number; readonly u: number } | undefined,
): string => (sum ? numberLine({ ...sum, kind, unit }) : '–');

/** A plain number of a detail table, in its unit. */
export const plainText = (x: number, kind: GroupTerm['kind'], unit: string): string =>
  numberText({ x, u: 'unknown', kind, unit }).value;
