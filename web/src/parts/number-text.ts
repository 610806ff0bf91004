import {
  lackWithKnown,
  type Printable,
  type PrintedNumber,
  printedLine,
  printedNumber,
} from '../../../src/quantity/index.ts';
import type { ShownCell } from '../worker/shown-cell.ts';

/** A number to be shown: SI, and the UCUM code of the unit in which it is shown. */
export interface Shown extends Omit<Printable, 'lacks'> {
  /** What a result lacks, where that is known: with nothing missing only its spread is incomplete. */
  readonly missing?: readonly unknown[];
}

/** A number in its printed pieces. */
export interface NumberText {
  readonly value: string;
  /** Behind ±; empty for an exact number, and for one that is not whole. */
  readonly spread: string;
  readonly unit: string;
  /** What is not whole about it, with what of its spread is known; empty where it is whole. */
  readonly lack: string;
}

/**
 * A number as printed, rounded by its spread; together with numbers that it is compared with or
 * adds up with, all to one place.
 */
export function numberText(shown: Shown, beside: readonly Shown[] = []): NumberText {
  const printed = print(shown, beside);
  const { value, spread, symbol, lack } = printed;
  return {
    value,
    spread: lack === '' ? spread : '',
    unit: symbol,
    lack: lackWithKnown(printed),
  };
}

/** "1 645.3 ± 0.2 kg", "462 kg, spread not known": in one line of text. */
export const numberLine = (shown: Shown, beside: readonly Shown[] = []): string =>
  printedLine(print(shown, beside));

/** "1 645.3 kg": the number alone, to be put into a formula; empty for none. */
export const nominalText = (shown: Shown | undefined, beside: readonly Shown[] = []): string =>
  shown ? printedLine({ ...print(shown, beside), spread: '', lack: '' }) : '';

const print = (shown: Shown, beside: readonly Shown[]): PrintedNumber =>
  printedNumber(printable(shown), beside.map(printable));

const printable = ({ missing, ...shown }: Shown): Printable => ({
  ...shown,
  lacks: missing?.length,
});

/** A share between 0 and 1 in whole per cent. */
export function shareText(share: number): string {
  const percent = Math.round(100 * share);
  return percent === 0 && share > 0 ? '<1 %' : `${percent} %`;
}

/** A cell of a study in one line of text. */
export function cellLine(cell: ShownCell): string {
  if (cell.c === 'missing') return cell.why;
  if (cell.c === 'text') return cell.text;
  if (cell.c === 'number') return numberLine(cell);
  return cell.x.map((x, i) => numberLine({ ...cell, x, u: cell.u[i] ?? 'unknown' })).join('; ');
}
