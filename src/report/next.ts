import type { MeasureNext, NextReading, OpenThing } from '../engine/index.ts';
import { printedSpread } from '../quantity/index.ts';
import type { ReportNext, ReportNextReading, ReportOpen } from './model.ts';
import { numberText, percentText, shownNumber } from './wording.ts';

/** What to measure next, in words; nothing when nothing is open. */
export function reportNext({ open, readings, leftOut }: MeasureNext): ReportNext {
  return {
    open: open.map(openOf),
    lacking: readings.filter((r) => r.why !== 'spread').map((r) => readingOf(r, open)),
    bettering: readings.filter((r) => r.why === 'spread').map((r) => readingOf(r, open)),
    leftOut,
  };
}

function openOf(thing: OpenThing): ReportOpen {
  const { about, words, x, u, kind, unit, wanted } = thing;
  const shown = (value: number, spread: number | 'incomplete') =>
    numberText(shownNumber({ x: value, u: spread, kind, unit, how: 'calculated' }));
  return {
    words: about === 'claim' ? `“${words}”` : words,
    number: x === undefined ? '' : shown(x, u),
    state: stateOf(thing),
    asked: wanted === undefined ? '' : `± ${spreadText(thing, wanted)}`,
  };
}

function stateOf({ about, u, decision }: OpenThing): string {
  if (u === 'incomplete') return 'not complete';
  return about === 'total' ? 'wider than asked' : (decision?.word ?? 'open');
}

function readingOf(reading: NextReading, open: readonly OpenThing[]): ReportNextReading {
  const { label, why, instrument, effects, perMinute } = reading;
  const minutes = instrument ? `${Number(instrument.minutes.toPrecision(2))} min` : '';
  return {
    label,
    why: why === 'spread' ? '' : why,
    instrument: instrument?.label ?? 'no instrument at hand',
    minutes,
    perMinute: why === 'spread' ? `${percentText(perMinute)} a min` : '',
    effects: effects.flatMap(({ open: i, u, after }) => {
      const thing = open[i];
      return thing ? [effectWords(thing, u, after)] : [];
    }),
  };
}

/** "gap, parts less scales: ± 1.02 kg to ± 0.96 kg". */
function effectWords(thing: OpenThing, u: number | undefined, after: number | undefined): string {
  const words = thing.about === 'claim' ? `“${thing.words}”` : thing.words;
  if (u === undefined || after === undefined) return words;
  return `${words}: ± ${spreadText(thing, u)} to ± ${spreadText(thing, after)}`;
}

const spreadText = ({ kind, unit }: OpenThing, u: number): string => printedSpread(u, kind, unit);
