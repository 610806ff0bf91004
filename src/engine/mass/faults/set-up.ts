import type { Candidate } from './candidate.ts';
import { candidatesOf } from './catalogue.ts';
import { type MassRecord, type MassRow, massOf } from './mass-record.ts';
import { residualsOf } from './residuals.ts';
import { RowEvidence } from './row-evidence.ts';
import { type MissingMass, Scorer } from './scorer.ts';

/** A record with all that a search for slips, or a limit of detection, goes by. */
export interface SetUp {
  readonly record: MassRecord;
  readonly evidence: RowEvidence;
  readonly scorer: Scorer;
  readonly candidates: readonly Candidate[];
}

export function setUp(record: MassRecord): SetUp {
  const evidence = new RowEvidence(record.rows);
  const scorer = new Scorer(residualsOf(record), record.rows, missingMasses(record.rows));
  return { record, evidence, scorer, candidates: candidatesOf({ record, evidence }) };
}

/** Spread of a mass without a reading, as a multiple of what parts of this record weigh on average. */
const WIDTH_OF_MISSING = 1.5;

/** Parts without a reading, with what the record's own parts say of how heavy parts are. */
function missingMasses(rows: readonly MassRow[]): MissingMass[] {
  const known = rows.map(massOf).filter((kg) => kg > 0);
  const mean = known.reduce((a, b) => a + b, 0) / Math.max(1, known.length);
  return rows.flatMap(({ mass, expected }, row) => {
    if (mass) return [];
    const { kg, relative } = expected ?? { kg: mean, relative: WIDTH_OF_MISSING };
    return [{ row, kg, u: kg * relative }];
  });
}
