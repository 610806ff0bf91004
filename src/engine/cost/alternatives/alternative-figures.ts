import { differenceOf, formUncertainty, type LinearForm } from '../../../quantity/index.ts';
import { decideDifference } from '../../decide.ts';
import type { Bars, LinePlot, LineType } from '../../figure.ts';
import type { Designs } from './alternative-look.ts';
import { logScale } from './break-even.ts';
import type { VolumeCrossing, VolumeCurves } from './volume-curves.ts';

const numberOf = (form: LinearForm) => ({ x: form.x, u: formUncertainty(form) });

/** Costs side by side, and the gap between the first and the cheapest other. */
export function costBars({ all, costs }: Designs): Bars {
  const others = costs.map((c, i) => ({ c, i })).slice(1);
  const best = others.reduce((a, b) => (b.c.x < a.c.x ? b : a));
  const d = costs[0] ? differenceOf(costs[0], best.c) : best.c;
  return {
    ...{ f: 'bars', title: 'Cost of the designs', kind: 'money', unit: '{u}', from: 'zero' },
    alt: 'A bar for each design with whiskers of two standard uncertainties, as built first.',
    rows: all.map((design, i) => ({
      label: design.name,
      ...(costs[i] ? { number: numberOf(costs[i]) } : {}),
    })),
    gap: {
      ...{ of: 0, less: best.i, number: numberOf(d) },
      word: decideDifference(d.x, formUncertainty(d), null).word,
    },
  };
}

const LINES: readonly LineType[] = ['continuous', 'dashed', 'chain', 'double chain'];

/** Pieces a year at which costs are drawn. */
const DRAWN = logScale(5000, 500_000, 25);

/** Costs over the pieces a year with their bands, and the break-even points among them. */
export function volumePlot(curves: VolumeCurves, found: readonly VolumeCrossing[]): LinePlot {
  const within = found.filter(({ crossing: { at } }) => at >= 5000 && at <= 500_000);
  return {
    ...{ f: 'line', title: 'Cost over the pieces a year' },
    alt: 'A line for each design with a band of two standard uncertainties; break-even points are marked.',
    x: { label: 'log₁₀ of the pieces a year', kind: 'ratio', unit: '1' },
    y: { label: 'cost of one', kind: 'money', unit: '{u}' },
    series: curves.names.map((label, i) => ({
      ...{ label, line: LINES[i % LINES.length] ?? 'continuous' },
      points: DRAWN.map((n) => ({ at: Math.log10(n), ...numberOf(curves.at(i, n)) })),
    })),
    marks: within.map(({ crossing: { at } }) => ({
      label: `break-even at ${Number(at.toPrecision(3))}`,
      number: { x: Math.log10(at) },
    })),
  };
}
