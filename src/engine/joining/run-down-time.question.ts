import { question } from '../method.ts';
import { CENSUS } from '../sections.ts';
import { threadPitch } from './thread-inputs.ts';

export default question({
  id: 'run-down-time',
  version: 1,
  title: 'Time to run a thread down',
  wording: 'How long does the tool turn until the thread is engaged?',
  subject: 'joint',
  onRequest: true,
  section: CENSUS,
  inputs: [
    {
      in: 'scalar',
      name: 'engaged',
      symbol: 'l',
      kind: 'length',
      unit: 'mm',
      meaning: 'length of thread to be run down',
      range: [1, 200],
      bounds: { above: 0 },
      where: 'engaged length of thread of the joint',
      find: (at) => at.number(at.subject, 'thread.engaged'),
    },
    {
      in: 'scalar',
      name: 'pitch',
      symbol: 'P',
      kind: 'length',
      unit: 'mm',
      meaning: 'pitch of the thread',
      range: [0.2, 6],
      bounds: { above: 0 },
      where: 'pitch of the joint, else by its size: ISO 261 coarse pitch unless another is named',
      find: (at) => threadPitch(at, at.subject),
    },
    {
      in: 'scalar',
      name: 'speed',
      symbol: 'n',
      kind: 'frequency',
      unit: '/min',
      meaning: 'speed of the tool while it runs down',
      range: [20, 3000],
      bounds: { above: 0 },
      where: 'speed of the tool at the joint',
      find: (at) => at.number(at.subject, 'tool.speed'),
    },
  ],
  body: {
    body: 'row',
    outputs: [
      {
        name: 'turns',
        symbol: 'N',
        kind: 'ratio',
        unit: '1',
        meaning: 'turns of the thread',
        shown: 'N = l / P',
        of: (l, p) => l / p,
      },
      {
        name: 'time',
        symbol: 't',
        kind: 'time',
        unit: 's',
        meaning: 'time the tool turns',
        shown: 't = l / (P n)',
        of: (l, p, n) => l / (p * n),
      },
    ],
  },
  modelError: {},
  sources: [
    { title: 'A turn of a single-start thread moves it by one pitch', status: 'published' },
    { title: 'ISO 261:1998 and ISO 262:1998', at: 'coarse pitches', status: 'published' },
  ],
  assumptions: [
    'Single-start thread at an even speed; starting, seating and the final tightening are not in it.',
  ],
  cautions: [],
  checks: [
    {
      what: 'M8 with 20 mm engaged at 480 a minute: 16 turns, 2 s; coarse pitches of ISO 261',
      source: 'closed form, own inputs; ISO 261:1998 as reprinted',
      status: 'own inputs, published formula',
      test: 'test/published/run-down.test.ts',
    },
  ],
  example: { engaged: '20 ± 0.5 mm', pitch: 'exactly 1.25 mm', speed: '480 ± 20 /min' },
});
