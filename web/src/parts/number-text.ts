import { formatTogether, type Kind, unitSymbol } from '../../../src/quantity/index.ts';
import type { ShownCell } from '../worker/shown-cell.ts';

/** A number to be shown: SI, and the UCUM code of the unit in which it is shown. */
export interface Shown {
  readonly x: number;
  /** Standard uncertainty in SI; the words say that it is not known or not complete. */
  readonly u: number | 'incomplete' | 'unknown';
  /** What of an incomplete spread is known, SI. */
  readonly knownU?: number;
  readonly kind: Kind;
  readonly unit: string;
  /** Significant digits where the spread does not tell; four when absent. */
  readonly digits?: number;
}

/** A number in its printed pieces. */
export interface NumberText {
  readonly value: string;
  /** Behind ±; empty for an exact number, or where nothing of the spread is known. */
  readonly spread: string;
  readonly unit: string;
  /** Why the spread is not all of it; empty where it is. */
  readonly lack: '' | 'spread incomplete' | 'spread not known';
}

/**
 * A number as printed, rounded by its spread; together with numbers of its kind beside it, all
 * to one place.
 */
export function numberText(shown: Shown, beside: readonly Shown[] = []): NumberText {
  const [text = ''] = formatTogether(
    [shown, ...beside.filter(fits(shown))].map(rounded),
    shown.digits === undefined ? {} : { digits: shown.digits },
  );
  const [value = '', spread = ''] = (text.split(',')[0] ?? '').split(' ± ');
  return { value, spread, unit: unitSymbol(shown.unit), lack: lackOf(shown) };
}

const rounded = ({ x, u, knownU, kind, unit }: Shown) => ({
  ...{ x, kind, unit },
  u: u === 'incomplete' ? knownU || undefined : u === 'unknown' ? undefined : u,
});

/** One place for both only while neither loses more than one of the digits of its spread. */
const fits =
  (a: Shown) =>
  (b: Shown): boolean => {
    const [ua, ub] = [rounded(a).u ?? 0, rounded(b).u ?? 0];
    return (
      a.kind === b.kind && a.unit === b.unit && ua > 0 && ub > 0 && ua < 10 * ub && ub < 10 * ua
    );
  };

const lackOf = ({ u }: Shown): NumberText['lack'] =>
  u === 'incomplete' ? 'spread incomplete' : u === 'unknown' ? 'spread not known' : '';

/** "1 645.3 ± 0.2 kg", "462 kg, spread not known": in one line of text. */
export function numberLine(shown: Shown, beside: readonly Shown[] = []): string {
  const { value, spread, unit, lack } = numberText(shown, beside);
  const number = spread === '' ? value : `${value} ± ${spread}`;
  const closed = unit === '%' && spread !== '' ? `(${number})` : number;
  return [[closed, unit].filter((t) => t !== '').join(' '), lack]
    .filter((t) => t !== '')
    .join(', ');
}

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
