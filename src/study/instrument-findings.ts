import { standardUncertainty, type Value } from '../quantity/index.ts';
import type { Finding } from './finding.ts';
import { type Instrument, readingU, resolutionU } from './instrument.ts';
import type { Reading } from './reading.ts';
import { type InForce, isMissing, type Missing } from './view.ts';

/** A cell with what is wrong about the instruments behind it. */
export function withInstruments(
  cell: InForce | Missing,
  instrument: (id: string) => Instrument | undefined,
): InForce | Missing {
  if (isMissing(cell)) return cell;
  const found = cell.from.flatMap(({ reading }) => {
    const used = reading.instrument === undefined ? undefined : instrument(reading.instrument);
    return used?.kind === undefined ? [] : instrumentFindings(reading, used);
  });
  return found.length === 0 ? cell : { ...cell, findings: [...cell.findings, ...found] };
}

function instrumentFindings(reading: Reading, instrument: Instrument): Finding[] {
  return [
    ...outsideRange(reading, instrument),
    ...pastDue(reading, instrument),
    ...finerThanShown(reading, instrument),
    ...offItsCheck(instrument),
  ];
}

const finding = (reading: Reading, code: string, what: string, next: string): Finding => ({
  ...{ code, level: 'doubt', what, next },
  place: { subject: reading.of.subject, property: reading.of.property, reading: reading.id },
  value: reading.asWritten,
});

function outsideRange(reading: Reading, { label, kind, range }: Instrument): Finding[] {
  const outside = numbersOf(reading.value, kind).some(
    (x) => range !== undefined && (x < range.low || x > range.high),
  );
  return outside
    ? [
        finding(
          reading,
          'outside-instrument',
          `the reading is outside the range of the ${label}`,
          'Measure it with an instrument made for it.',
        ),
      ]
    : [];
}

function pastDue(reading: Reading, { label, due }: Instrument): Finding[] {
  return due !== undefined && reading.takenAt.local.slice(0, 10) > due.slice(0, 10)
    ? [
        finding(
          reading,
          'calibration-past-due',
          `the calibration of the ${label} held until ${due.slice(0, 10)} only`,
          'Have it calibrated; measure again if it was found off.',
        ),
      ]
    : [];
}

/** A spread below what the display can show is not believed; repeats may lie below it by luck. */
function finerThanShown(reading: Reading, { label, kind, resolution }: Instrument): Finding[] {
  const { value } = reading;
  if (resolution === undefined || value.t !== 'scalar' || value.kind !== kind) return [];
  const u = standardUncertainty(value.spread, value.x);
  return u !== undefined && u < resolutionU(resolution) * (1 - 1e-9)
    ? [
        finding(
          reading,
          'finer-than-resolution',
          `the spread stated is smaller than the step of the ${label} allows`,
          'State at least 0.29 of a step of its display as the spread (JCGM 100:2008, F.2.2.1).',
        ),
      ]
    : [];
}

/** Its check is told once for the instrument, not for every reading. */
function offItsCheck(instrument: Instrument): Finding[] {
  const { check, label } = instrument;
  if (!check) return [];
  const u = Math.hypot(check.u, readingU(instrument, check.nominal) ?? 0);
  if (Math.abs(check.shown - check.nominal) <= 2 * u) return [];
  return [
    {
      ...{ code: 'instrument-off-its-check', level: 'doubt', place: { subject: label } },
      value: `${check.shown} shown for ${check.nominal} on ${check.at.slice(0, 10)}, SI`,
      what: `the ${label} was further off its check than its spread allows`,
      next: 'Have it adjusted, and measure again what was read on it since its last good check.',
    },
  ];
}

function numbersOf(value: Value, kind: Instrument['kind']): readonly number[] {
  if (value.t === 'scalar' && value.kind === kind) return [value.x];
  return [];
}
