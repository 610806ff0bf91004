/**
 * How well the search for slips finds faults of which the truth is known: a made-up vehicle is
 * weighed anew with the spread of its scales, faults are planted from a seed, and the question
 * mass-faults is asked of what was written down.
 *
 *   node bin/run-ts.js bench/fault-search.ts --seed 1 --sets 200 [--clean 200] [--json]
 */
import { parseArgs } from 'node:util';
import { FIRST } from './fault-sets/judge.ts';
import { type Figures, runSets, type Share } from './fault-sets/run-sets.ts';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    sets: { type: 'string', default: '200' },
    clean: { type: 'string' },
    json: { type: 'boolean', default: false },
  },
});
const [seed, sets] = [Number(values.seed), Number(values.sets)];
const clean = Number(values.clean ?? values.sets);
if (![seed, sets, clean].every((n) => Number.isInteger(n) && n >= 0))
  throw new RangeError('--seed, --sets and --clean take whole numbers from 0');

const shown = ({ is, of }: Share): string =>
  `${is} of ${of}${of === 0 ? '' : `, ${((100 * is) / of).toFixed(1)} %`}`;
const row = (what: string, s: Share, aim = ''): string =>
  `${what.padEnd(66)} ${shown(s).padEnd(20)} ${aim}`.trimEnd();

function report(f: Figures): string {
  const kinds = Object.entries(f.byKind).map(
    ([kind, k]) => `  ${kind.padEnd(46)} ${shown(k.above).padEnd(20)} ${shown(k.below)}`,
  );
  return [
    `seed ${f.seed}: ${f.sets} sets of faults, ${f.clean} records without; VAN-27 (invented) weighed anew each time`,
    '',
    row(`faults above 3 u of a residual they touch, in the first ${FIRST}`, f.above, 'aim 80 %'),
    row('the same, only sums counted as residuals, not the two sides', f.aboveInSums),
    row('faults below 3 u, found all the same', f.below),
    row('faults of other kinds above 3 u, said to be unexplained', f.unexplained),
    row('sets of the catalogue only, called unexplained as well', f.wronglyUnexplained),
    row('records without faults that raise a suspect', f.falseSuspects, 'aim at most 5 %'),
    '',
    `  ${'kind'.padEnd(46)} ${'above 3 u'.padEnd(20)} below`,
    ...kinds,
    '',
    `time of an answer: median ${f.ms.median.toFixed(0)} ms, 95 % within ${f.ms.most.toFixed(0)} ms, longest ${f.ms.longest.toFixed(0)} ms`,
  ].join('\n');
}

const figures = runSets(seed, sets, clean);
console.log(values.json ? JSON.stringify(figures) : report(figures));
