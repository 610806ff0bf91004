import {
  type Kind,
  kindDef,
  standardUncertainty,
  type Value,
  type Way,
} from '../../../src/quantity/index.ts';
import { type InForce, isMissing, type Missing, propertyDef } from '../../../src/study/index.ts';

/** Standard uncertainty in SI; 'unknown' when it is not known. */
export type ShownSpread = number | 'unknown';

/** A value as pages show it. Numbers are SI, `unit` is the UCUM code in which they are shown. */
export type ShownValue =
  | {
      readonly c: 'number';
      readonly x: number;
      readonly u: ShownSpread;
      readonly kind: Kind;
      readonly unit: string;
      /** Significant digits as written, where the spread does not tell how many to show. */
      readonly digits?: number;
    }
  | {
      readonly c: 'vector';
      readonly x: readonly number[];
      readonly u: readonly ShownSpread[];
      readonly kind: Kind;
      readonly unit: string;
    }
  | { readonly c: 'text'; readonly text: string };

/** A cell of a study: its value in force and how it is known, or why there is none. */
export type ShownCell =
  | (ShownValue & {
      readonly how: Way;
      /** Something is found about it: readings that disagree, say. */
      readonly doubt?: true;
    })
  | { readonly c: 'missing'; readonly why: string };

export function shownCell(cell: InForce | Missing): ShownCell {
  if (isMissing(cell)) return { c: 'missing', why: cell.why };
  const doubt = cell.findings.some((f) => f.level !== 'note');
  const value = shownValue(cell.value, cell.of.property);
  return {
    ...withDigits(value, cell.from[0]?.reading.asWritten ?? ''),
    how: cell.how,
    ...(doubt ? { doubt: true as const } : {}),
  };
}

/** A number without a spread is shown to the digits that somebody wrote: "1.8 mm" is not 1.800. */
export function withDigits(value: ShownValue, asWritten: string): ShownValue {
  if (value.c !== 'number' || value.u !== 'unknown') return value;
  const digits = /\d[\d.,]*/.exec(asWritten)?.[0].replace(/[.,]/g, '').replace(/^0+/, '').length;
  return digits ? { ...value, digits } : value;
}

/** A value in the usual unit of its property, else of its kind. */
export function shownValue(v: Value, property: string): ShownValue {
  switch (v.t) {
    case 'scalar':
      return number(v.x, v.kind, property, spreadOf(standardUncertainty(v.spread, v.x)));
    case 'count':
      return number(v.n, 'count', property, spreadOf(standardUncertainty(v.spread, v.n)));
    case 'vector': {
      const n = v.x.length;
      const u = v.x.map((_, i) =>
        v.cov.length === 0 ? 'unknown' : Math.sqrt(v.cov[i * n + i] ?? 0),
      );
      return { c: 'vector', x: v.x, u, kind: v.kind, unit: unitOf(v.kind, property) };
    }
    case 'text':
      return { c: 'text', text: v.text };
    case 'term':
      return { c: 'text', text: v.code };
    case 'flag':
      return { c: 'text', text: v.on ? 'yes' : 'no' };
    case 'ref':
      return { c: 'text', text: v.to };
    case 'blob':
      return { c: 'text', text: `file ${v.hash.slice(0, 8)}` };
    case 'absent':
      return { c: 'text', text: v.why };
  }
}

const number = (x: number, kind: Kind, property: string, u: ShownSpread): ShownValue => ({
  c: 'number',
  x,
  u,
  kind,
  unit: unitOf(kind, property),
});

const spreadOf = (u: number | undefined): ShownSpread => u ?? 'unknown';

function unitOf(kind: Kind, property: string): string {
  const def = propertyDef(property);
  return def?.kind === kind && def.unit !== undefined ? def.unit : kindDef(kind).show[0];
}
