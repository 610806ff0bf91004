import { type ProcessSpec, step } from './process-model.ts';
import { machineRate, shared } from './shared-inputs.ts';
import { given, reading, type Spec, usual } from './usual-inputs.ts';
import { ALIKE } from './welding-inputs.ts';

/** What tells fasteners apart: what a piece costs, how long it takes, and by what. */
export interface Fastener
  extends Pick<ProcessSpec, 'id' | 'title' | 'wording' | 'assumptions' | 'example'> {
  readonly piece: string;
  readonly time: string;
  /** Words, rate and name of the tool in the hand or at the robot. */
  readonly tool: readonly [words: string, written: string, name: string];
  /** Of the hole or seat that it needs, made beforehand. */
  readonly seat: string;
}

const SEAT: Omit<Spec, 'meaning'> = {
  ...{ name: 'seat', symbol: 'p_h', kind: 'money', unit: '{u}', range: [0, 5], moves: 'up' },
};

/** Fasteners bought in and put in one by one: screw, rivet nut, clip. */
export function fastened(f: Fastener): ProcessSpec {
  return {
    ...{ id: f.id, title: f.title, wording: f.wording, subject: 'joint' },
    inputs: [
      ALIKE,
      given({
        ...{ name: 'piece', symbol: 'p_b', kind: 'money', unit: '{u}', range: [0.001, 60] },
        ...{ meaning: `price of a ${f.piece}`, moves: 'up' },
      }),
      usual({ ...SEAT, meaning: f.seat }, '0 / 0.01 / 0.03 {u}'),
      usual(
        {
          ...{
            name: 'drive',
            symbol: 't_w',
            kind: 'time',
            unit: 's',
            range: [0.3, 120],
            moves: 'up',
          },
          meaning: `time to put in a ${f.piece}`,
        },
        f.time,
        reading('time.drive', 'time to drive, each,'),
      ),
      usual(
        {
          ...{
            name: 'access',
            symbol: 't_b',
            kind: 'time',
            unit: 's',
            range: [0, 120],
            moves: 'up',
          },
          meaning: 'time to reach it and take the next one',
        },
        '0 / 0.5 / 1.5 s',
        reading('time.access', 'time to reach, each,'),
      ),
      machineRate(...f.tool),
      shared('crew', 'exactly 1'),
      shared('rejects', '0.1 / 0.3 / 0.6 %'),
    ],
    steps: [
      step('working', 'z', 'time', 's', 'time of all', 'z = n (t_w + t_b)'),
      step('parts', 'C_v', 'money', '{u}', 'pieces and their seats', 'C_v = n (p_b + p_h)'),
    ],
    plan: (x) => {
      const { count = 0 } = x;
      const working = count * ((x.drive ?? 0) + (x.access ?? 0));
      const parts = count * ((x.piece ?? 0) + (x.seat ?? 0));
      return { work: { cycle: working, bought: parts }, steps: { working, parts } };
    },
    sources: [{ title: 'Fasteners by piece and time', status: 'common practice, no source' }],
    assumptions: f.assumptions,
    checks: [
      {
        what: 'pieces, time and cost worked by hand',
        source: 'own inputs, sums worked by hand',
        status: 'common practice',
        test: 'test/published/joining-processes.test.ts',
      },
    ],
    example: f.example,
  };
}
