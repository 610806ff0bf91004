import type { BarRow, Bars } from '../figure.ts';
import type { Cause, DifferenceByCause } from './difference-by-cause.ts';

/** What each cause is called. */
export const CAUSE_WORDS: Readonly<Record<Cause, string>> = {
  facts: 'facts of the record',
  rates: 'rates',
  volume: 'pieces a year',
  method: 'method',
};

/** From the first result to the second in steps, a cause each. */
export function causeBars(d: DifferenceByCause, first: string, second: string): Bars {
  const steps = d.causes.filter((c) => c.d !== 0 || c.u !== 0);
  let reached = d.first;
  const rows = steps.map((c): BarRow => {
    const start = reached;
    reached += c.d;
    const number = { x: c.d, u: c.u };
    return { label: CAUSE_WORDS[c.cause], number, word: c.word, start };
  });
  return {
    ...{ f: 'bars', title: `Cost of the parts, ${first} to ${second}, by cause` },
    ...{ kind: 'money', unit: '{u}', from: 'nearest' },
    alt: `Steps from ${first} to ${second}: each bar begins where the one above it ends.`,
    rows: [
      { label: first, number: { x: d.first } },
      ...rows,
      { label: second, number: { x: d.second } },
    ],
  };
}
