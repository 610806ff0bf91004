import { expect, it } from 'vitest';
import { runSets } from '../../bench/fault-sets/run-sets.ts';

/** What `node bin/run-ts.js bench/fault-search.ts --seed 1 --sets 200 --clean 120` prints. */
const figures = runSets(1, 200, 120);
const share = ({ is, of }: { readonly is: number; readonly of: number }): number => is / of;

it('of faults above 3 u of a residual at least 80 % are among the first ten suspects', () => {
  expect(figures.above.of).toBeGreaterThan(150);
  expect(share(figures.above)).toBeGreaterThanOrEqual(0.8);
  expect(share(figures.aboveInSums)).toBeGreaterThanOrEqual(0.8);
});

it('faults of kinds outside the catalogue are said to be unexplained', () => {
  expect(figures.unexplained.of).toBeGreaterThan(15);
  expect(share(figures.unexplained)).toBeGreaterThanOrEqual(0.85);
  expect(share(figures.wronglyUnexplained)).toBeLessThan(0.4);
});

it('records without faults raise a suspect at most once in twenty', () => {
  expect(share(figures.falseSuspects)).toBeLessThanOrEqual(0.05);
});

it('the same seed gives the same figures', () => {
  const [once, again] = [runSets(9, 4, 4), runSets(9, 4, 4)].map(({ ms: _, ...rest }) => rest);
  expect(again).toEqual(once);
});
