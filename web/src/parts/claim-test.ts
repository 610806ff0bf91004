import type { ClaimRow } from '../worker/claim-rows.ts';
import { numberLine } from './number-text.ts';

/** "at least 120 W·h/kg": what would make a claim true, in the unit of the result where there is one. */
export function testText({ tie, out }: ClaimRow): string {
  if (!tie) return '';
  const { is, value, asWritten } = tie.test;
  const limit = out ? numberLine({ x: value, u: 0, kind: out.kind, unit: out.unit }) : asWritten;
  return `${is} ${limit}`;
}
