import { fold, type NodeSpec, type StudyView } from '../../src/study/index.ts';
import { LITERAL } from './signs.ts';

const node = (id: string, kind: NodeSpec['kind'], label: string): NodeSpec => ({
  id,
  kind,
  label,
  name: `${label} name`,
  parent: kind === 'vehicle' ? null : 'root',
});

/** A study with a vehicle and two parts that have places. */
export function cart(): StudyView {
  const cell = (subject: string, property: string) => ({ subject, property, condition: 'kerb' });
  const reading = (subject: string, property: string, value: object) => ({
    v: 1,
    e: 'reading.add',
    reading: {
      id: `${subject}-${property}`,
      of: cell(subject, property),
      value,
      asWritten: '',
      how: 'supplied',
      by: 'lead',
      takenAt: { local: '2026-10-05T08:00' },
      evidence: [],
      causes: [],
    },
  });
  const length = (x: number) => ({ t: 'scalar', kind: 'length', x, spread: { s: 'exact' } });
  const at = (x: readonly number[]) => ({ t: 'vector', kind: 'length', x, cov: [], frame: 'v' });
  const mass = { t: 'scalar', kind: 'mass', x: 20, spread: { s: 'normal', u: 0.1 } };
  const entries = [
    {
      v: 1,
      e: 'study.put',
      set: { title: `Cart ${LITERAL}`, vehicle: 'CART', condition: 'kerb', invented: true },
    },
    { v: 1, e: 'condition.put', id: 'kerb', words: 'kerb, as received' },
    ...[
      node('root', 'vehicle', 'CART'),
      node('p1', 'part', '10-001'),
      node('p2', 'part', '20-001'),
    ].map((n) => ({ v: 1, e: 'node.add', node: n })),
    ...['wheelbase', 'tyreRadius', 'track.front', 'track.rear'].map((property, i) =>
      reading('root', property, length([2.9, 0.32, 1.5, 1.6][i] ?? 1)),
    ),
    reading('p1', 'position', at([0.4, 0.2, 0.5])),
    reading('p2', 'position', at([1.9, -0.2, 0.4])),
    reading('p1', 'mass', mass),
  ];
  const change = {
    id: '01JD0000000000000000000000',
    study: 'cart',
    device: 'desk',
    seq: 1,
    clock: '0193000000000-0000-desk',
    by: 'lead',
    gesture: '01JD0000000000000000000000',
    words: 'made up',
    saw: {},
    entries,
  };
  return fold('cart', [change as unknown as Parameters<typeof fold>[1][number]]);
}
