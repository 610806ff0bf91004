import { useId } from 'react';
import { numberLine } from '../parts/number-text.ts';
import { OutNumber } from '../parts/out-number.tsx';
import { outOf } from '../parts/use-out.ts';
import type { AnswerSheet, SheetOut } from '../worker/answer-sheet.ts';

/** Ways to expect a mass, with the output that says how far the typed one is off. */
const WAYS = [
  { by: 'by the other side', expected: 'bySide', off: 'offSide' },
  { by: 'by volume and density', expected: 'bySolid', off: 'offSolid' },
  { by: 'as a formed sheet', expected: 'bySheet', off: 'offSheet' },
  { by: 'left by its module', expected: 'byRemainder', off: 'offRemainder' },
] as const;

/** Whiskers and bands reach this many standard uncertainties to each side. */
const BAND_U = 2;
const WIDTH = 400;
const HEIGHT = 34;

interface Way {
  readonly by: string;
  readonly expected: SheetOut;
  readonly off: SheetOut | undefined;
}

export interface ExpectedBandsProps {
  readonly sheet: AnswerSheet;
  /** Mass as typed, kg; undefined while nothing readable is. */
  readonly typed: number | undefined;
}

/** What each way lets expect, as a band of two standard uncertainties with the typed mass across. */
export function ExpectedBands({ sheet, typed }: ExpectedBandsProps) {
  const ways = WAYS.flatMap(({ by, expected, off }): Way[] => {
    const found = outOf(sheet, expected);
    return found ? [{ by, expected: found.out, off: outOf(sheet, off)?.out }] : [];
  });
  if (ways.length === 0)
    return (
      <p className="soft">
        Nothing to expect it by yet: no other side, no volume with a density, no thickness with an
        envelope, and no module that it was weighed in.
      </p>
    );
  const at = scaleOf(ways, typed);
  return (
    <ul className="expected-bands">
      {ways.map((way) => (
        <li key={way.by}>
          <p>
            <span>
              expected <OutNumber found={{ sheet, out: way.expected }} /> {way.by}
            </span>
            {typed !== undefined && <Verdict way={way} />}
          </p>
          <Band way={way} typed={typed} at={at} />
        </li>
      ))}
    </ul>
  );
}

/** How many standard uncertainties it is off, in a word. */
function Verdict({ way: { off } }: { readonly way: Way }) {
  if (!off) return null;
  const times = off.knownU > 0 ? Math.abs(off.x) / off.knownU : Number.NaN;
  if (!Number.isFinite(times)) return <b>spread not known</b>;
  const far = times > WARN_FROM_U;
  const word = times <= BAND_U ? 'within' : far ? 'look again' : 'aside';
  return (
    <b className={far ? 'open' : ''}>
      {word} <small>{times.toFixed(times < 10 ? 1 : 0)} u</small>
    </b>
  );
}

/** As the question's finding warns. */
const WARN_FROM_U = 4;

interface BandProps {
  readonly way: Way;
  readonly typed: number | undefined;
  readonly at: (kg: number) => number;
}

function Band({ way: { by, expected }, typed, at }: BandProps) {
  const half = BAND_U * expected.knownU;
  const [from, to] = [at(expected.x - half), at(expected.x + half)];
  const hatch = useId().replaceAll(/[^\w-]/g, '');
  const words = `Band of ${numberLine(expected)} ${by}`;
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={words}
    >
      <defs>
        <pattern id={hatch} width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M-2 2L2 -2M0 8L8 0M6 10L10 6" />
        </pattern>
      </defs>
      <rect className="frame" x="1" y="7" width={WIDTH - 2} height="20" />
      <rect
        className="band"
        fill={`url(#${hatch})`}
        x={from}
        y="7"
        width={Math.max(to - from, 2)}
        height="20"
      />
      {typed !== undefined && <path className="typed" d={`M${at(typed)} 1V33`} />}
    </svg>
  );
}

/** One scale for all ways: from the lowest band to the highest, and the typed mass within it. */
function scaleOf(ways: readonly Way[], typed: number | undefined): (kg: number) => number {
  const ends = ways.flatMap(({ expected: { x, knownU } }) => [
    x - 2 * BAND_U * knownU,
    x + 2 * BAND_U * knownU,
  ]);
  const all = typed === undefined ? ends : [...ends, typed];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = 0.04 * (high - low) || 1;
  return (kg) => (WIDTH * (kg - low + room)) / (high - low + 2 * room);
}
