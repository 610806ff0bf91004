import { formatTable } from './csv.ts';
import { CLAIMS } from './source/claims.ts';

export const CLAIM_HEADINGS = [
  'id',
  'words',
  'subject',
  'question',
  'output',
  'is',
  'value',
  'unit',
  'how',
  'by',
  'at',
] as const;

/** claims.csv: what was said at the vehicle, one claim a row. */
export const claimsTable = (): string =>
  formatTable(
    CLAIM_HEADINGS,
    CLAIMS.map((claim) => ({ ...claim, value: String(claim.value) })),
  );
