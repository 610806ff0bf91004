import {
  birgeRatio,
  enNumber,
  precisionOf,
  type ScalarValue,
  spreadFromSi,
  standardUncertainty,
  unitSymbol,
} from '../quantity/index.ts';
import type { Finding } from './finding.ts';
import { propertyDef } from './properties.ts';
import type { CellRef, Reading } from './reading.ts';

/** A reading of a number whose spread is known and not zero. */
export interface KnownReading {
  readonly reading: Reading;
  readonly value: ScalarValue;
  readonly u: number;
}

/** The readings as numbers with known spreads; undefined when one of them is none. */
export function knownReadings(readings: readonly Reading[]): readonly KnownReading[] | undefined {
  const known = readings.flatMap((reading): KnownReading[] => {
    const { value } = reading;
    const u = value.t === 'scalar' ? standardUncertainty(value.spread, value.x) : undefined;
    return value.t === 'scalar' && u !== undefined && u > 0 ? [{ reading, value, u }] : [];
  });
  return known.length === readings.length ? known : undefined;
}

/** Largest E_n number of one reading against others, in words; empty where a spread is not known. */
export function enWords(latest: Reading, others: readonly Reading[]): string {
  const [a, ...more] = knownReadings([latest, ...others]) ?? [];
  if (!a || more.length === 0) return '';
  const largest = Math.max(...more.map((b) => enNumber(a.value.x - b.value.x, a.u, b.u)));
  return `; En ${largest.toFixed(2)}`;
}

/** Beyond this many standard deviations of it a Birge ratio is no accident. */
const BIRGE_LIMIT_U = 2;

/** How well readings agree that were combined. */
export function combinedFindings(of: CellRef, known: readonly KnownReading[]): Finding[] {
  const xs = known.map((k) => k.value.x);
  const ratio = birgeRatio(
    xs,
    known.map((k) => k.u),
  );
  const largestEn = Math.max(
    ...known.flatMap((a) => known.map((b) => enNumber(a.value.x - b.value.x, a.u, b.u))),
  );
  const numbers = `En ${largestEn.toFixed(2)} at most, Birge ratio ${ratio.toFixed(2)}`;
  const limit = 1 + BIRGE_LIMIT_U / Math.sqrt(2 * (known.length - 1));
  const place = { subject: of.subject, property: of.property };
  const value = `${known.map((k) => k.reading.asWritten).join(' and ')}: ${numbers}`;
  if (ratio > limit)
    return [
      {
        ...{ code: 'spreads-too-small', level: 'doubt', place, value },
        what: 'readings that were combined scatter more than their spreads say',
        next: 'Look for what moved between them, or state larger spreads.',
      },
    ];
  return [
    {
      ...{ code: 'readings-combined', level: 'note', place, value },
      what: 'agreeing readings are combined by their spreads',
      next: 'Nothing to do; choose one of them to set it in force alone.',
    },
  ];
}

/** Repeatability and reproducibility, where two people or more read and one of them repeated. */
export function precisionFindings(of: CellRef, readings: readonly Reading[]): Finding[] {
  const byPerson = new Map<string, number[]>();
  for (const { by, value } of readings) {
    if (value.t !== 'scalar') continue;
    const xs = value.spread.s === 'repeats' ? value.spread.xs : [value.x];
    byPerson.set(by, [...(byPerson.get(by) ?? []), ...xs]);
  }
  const precision = precisionOf([...byPerson.values()]);
  const kind = readings[0]?.value.t === 'scalar' ? readings[0].value.kind : undefined;
  const unit = propertyDef(of.property)?.unit;
  if (!precision || kind === undefined || unit === undefined) return [];
  const shown = (x: number) =>
    `${Number(spreadFromSi(x, unit, kind).toPrecision(2))} ${unitSymbol(unit)}`.trim();
  const { repeatability, reproducibility, dof } = precision;
  return [
    {
      code: 'repeatability',
      level: 'note',
      place: { subject: of.subject, property: of.property },
      value: `${shown(repeatability)} within one person (${dof} degrees of freedom), ${shown(reproducibility)} between people`,
      what: 'standard deviations of readings by several people, repeatability and reproducibility',
      next: 'Where they differ much, agree on how to take the reading.',
    },
  ];
}
