import {
  type Answer,
  askWritten,
  loadQuestion,
  type WrittenInputs,
} from '../../../src/engine/index.ts';
import { fromSi } from '../../../src/quantity/index.ts';
import { out } from '../made-question.ts';

/** Asks a registered question of plain values. */
export const asked = async (id: string, inputs: WrittenInputs): Promise<Answer> =>
  askWritten((await loadQuestion(id)).question, inputs);

/** A result in the unit in which it is shown. */
export function shown(answer: Answer, name: string): number {
  const { x, unit, kind } = out(answer, name);
  return fromSi(x, unit, kind);
}

/** How far a number is off what is expected, as a share of it. */
export const off = (x: number, expected: number): number => Math.abs(x / expected - 1);

/** Exact inputs of one unit: { h: 80 } in mm becomes { h: 'exactly 80 mm' }. */
export const exactly = (
  numbers: Readonly<Record<string, number>>,
  unit: string,
): Record<string, string> =>
  Object.fromEntries(Object.entries(numbers).map(([k, x]) => [k, `exactly ${x} ${unit}`.trim()]));

/** Codes of the findings of an answer. */
export const codes = (answer: Answer): string[] => answer.findings.map((f) => f.code);

/** Words of one cell of the table beside an answer: the row whose first cell is `row`. */
export function detailRow(answer: Answer, row: string): readonly (string | number)[] {
  const found = answer.detail?.rows.find((r) => r[0] === row);
  if (!found) throw new Error(`no row ${row} in the table of ${answer.question}`);
  return found;
}
