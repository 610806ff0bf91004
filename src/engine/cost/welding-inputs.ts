import type { ScalarInput } from '../method.ts';
import { given, reading, usual } from './usual-inputs.ts';

/** Length of a seam or bead; of a joint of the record, each. */
export const SEAM: ScalarInput = given(
  {
    ...{ name: 'length', symbol: 'l', kind: 'length', unit: 'm', range: [0.005, 200] },
    ...{ meaning: 'length of weld or bead, each', moves: 'up' },
  },
  reading('seam.length', 'length of weld or bead, each,'),
);

/** How many are alike: joints are counted by their holes, else by their bag. */
export const ALIKE: ScalarInput = given(
  {
    ...{ name: 'count', symbol: 'n', kind: 'count', unit: '1', range: [1, 5000] },
    ...{ meaning: 'joints that are alike', bounds: { atLeast: 1 }, moves: 'up' },
  },
  {
    where: 'count by holes of the joint, else by its bag',
    find: (at) => {
      const holes = at.number(at.subject, 'count.holes');
      return 'missing' in holes ? at.number(at.subject, 'count.bag') : holes;
    },
  },
);

/** Time that goes by for each seam beside the seam itself. */
export const beside = (meaning: string, written: string): ScalarInput =>
  usual(
    {
      name: 'beside',
      symbol: 't_b',
      kind: 'time',
      unit: 's',
      meaning,
      range: [0, 300],
      moves: 'up',
    },
    written,
  );

/** Time to put the parts into the fixture and take them out, once for all. */
export const handling = (written: string): ScalarInput =>
  usual(
    {
      ...{ name: 'handling', symbol: 't_d', kind: 'time', unit: 's', range: [0, 900], moves: 'up' },
      meaning: 'time to load, clamp and unload, once for all',
    },
    written,
  );

/** Speed along a seam. */
export const seamSpeed = (meaning: string, written: string): ScalarInput =>
  usual(
    {
      ...{ name: 'speed', symbol: 'v', kind: 'speed', unit: 'm/min', range: [0.02, 60], meaning },
      ...{ bounds: { above: 0 }, moves: 'down' },
    },
    written,
  );
