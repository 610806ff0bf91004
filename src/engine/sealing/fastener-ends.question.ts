import type { Id } from '../../study/index.ts';
import { type Finder, type Found, question, type ScalarColumn, type TallyBody } from '../method.ts';
import { SEALING } from '../sections.ts';
import { worked } from '../structure/outputs.ts';
import { lookAtEnds } from './fastener-look.ts';
import { makersOf } from './graph/from-study.ts';
import type { Met } from './graph/place-fastener.ts';
import { placeFastener } from './graph/place-fastener.ts';
import type { PlacedWall } from './graph/sealing-graph.ts';
import {
  crossingCount,
  crossingOf,
  labelOf,
  nameColumn,
  recordedWord,
  sealing,
  wordColumn,
} from './sealing-columns.ts';

const AXES = ['x', 'y', 'z'] as const;

const fastenersOf = (at: Finder): readonly Id[] =>
  at.view
    .nodes('crossing')
    .map((n) => n.id)
    .filter((id) => crossingOf(at, id)?.in.fastener !== undefined);

/** The first wall on its way behind which something must stay dry. */
function decidingWall(at: Finder, row: Id): Met<PlacedWall> | undefined {
  const fastener = crossingOf(at, row)?.in.fastener;
  if (!fastener) return undefined;
  const { walls, dry } = sealing(at);
  const long = placeFastener({ ...fastener, reach: Number.POSITIVE_INFINITY }, walls).passed;
  const behind = ({ wall }: Met<PlacedWall>) =>
    dry.has((fastener.sign > 0 ? wall.barrier.b : wall.barrier.a) ?? '');
  return long.find(behind);
}

/** A face of the wall that decides, as recorded. */
function face(at: Finder, row: Id, which: 'near' | 'far'): Found {
  const wall = decidingWall(at, row);
  const fastener = crossingOf(at, row)?.in.fastener;
  const id = wall && at.node(wall.wall.barrier.name);
  if (!wall || !fastener || id === undefined)
    return at.missing(labelOf(at, row), 'no wall to a dry zone lies on its way');
  const high = fastener.sign > 0 === (which === 'far');
  return at.number(id, `box.${AXES[fastener.axis]}${high ? 1 : 0}`);
}

function reachOf(at: Finder, row: Id): Found {
  if (at.view.properties(row).includes('crossing.reach')) return at.number(row, 'crossing.reach');
  const x = crossingOf(at, row)?.in.fastener?.reach;
  const [maker] = makersOf(at.view, row);
  if (x === undefined || maker === undefined)
    return at.missing(labelOf(at, row), 'its length is neither recorded nor in a specification');
  return at.tabled({
    id: `length/${maker}`,
    words: `length of ${labelOf(at, maker)}`,
    x,
    spread: { s: 'rectangular', half: 0.6e-3 },
    how: 'supplied',
    source: 'named in the specification; tolerance js15 of ISO 4759-1, from memory',
  });
}

const length = (
  name: string,
  symbol: string,
  meaning: string,
  where: string,
  find: ScalarColumn['find'],
): ScalarColumn => ({
  in: 'scalar',
  ...{ name, symbol, kind: 'length', unit: 'mm', meaning, where, find },
  range: [-10000, 10000],
});

/** How far an end is past a face: beyond it where above zero. */
const past = (seat: number, sign: number, reach: number, at: number): number =>
  reach - sign * (at - seat);

const NEEDS = ['count', 'seat', 'sign', 'reach', 'near', 'far'];
const term = (
  name: string,
  symbol: string,
  shown: string,
  each: TallyBody['terms'][number]['each'],
): TallyBody['terms'][number] => ({ name, symbol, kind: 'count', shown, needs: NEEDS, each });

export default question({
  id: 'fastener-ends',
  version: 1,
  title: 'Where fasteners end',
  wording: 'Which fasteners go right through into a volume that must stay dry?',
  subject: 'study',
  section: SEALING,
  inputs: [
    {
      in: 'table',
      name: 'fasteners',
      meaning: 'a fastener with its seat, direction and length',
      where: 'every crossing with a place and a direction',
      rows: fastenersOf,
      columns: [
        nameColumn('fastener'),
        wordColumn('of', 'joint that it belongs to', 'what makes the crossing', (at, row) =>
          makersOf(at.view, row)
            .map((id) => labelOf(at, id))
            .join(', '),
        ),
        recordedWord('seal', 'crossing.seal'),
        wordColumn(
          'wall',
          'wall to the dry zone on its way',
          'barriers with an axis',
          (at, row) => decidingWall(at, row)?.wall.barrier.name ?? 'none',
        ),
        wordColumn('ends', 'where it ends', 'by length and walls', endWords),
        crossingCount,
        length('seat', 'c', 'seat along its direction', 'place of the crossing', (at, row) =>
          at.number(row, 'place', crossingOf(at, row)?.in.fastener?.axis ?? 0),
        ),
        {
          in: 'scalar',
          ...{ name: 'sign', symbol: 's', kind: 'ratio', unit: '1', range: [-1, 1] },
          meaning: 'direction: 1 towards larger coordinates, −1 towards smaller ones',
          where: 'direction of the crossing',
          find: (at, row) => at.exact(crossingOf(at, row)?.in.fastener?.sign ?? 1, 'direction'),
        },
        length('reach', 'l', 'length from seat to end', 'length in the specification', reachOf),
        {
          ...length('near', 'f₁', 'nearer face of that wall', 'barrier', (at, row) =>
            face(at, row, 'near'),
          ),
          optional: true,
        },
        {
          ...length('far', 'f₂', 'farther face of that wall', 'barrier', (at, row) =>
            face(at, row, 'far'),
          ),
          optional: true,
        },
      ],
    },
  ],
  body: {
    body: 'tally',
    table: 'fasteners',
    terms: [
      { ...term('all', 'N', 'Σ n', (n) => n), needs: ['count'] },
      term('through', 'N_d', 'Σ n, l > s (f₂ − c)', (n, c, s, l, _near, far) =>
        past(c, s, l, far) > 0 ? n : 0,
      ),
      term('within', 'N_w', 'Σ n, s (f₁ − c) < l ≤ s (f₂ − c)', (n, c, s, l, near, far) =>
        past(c, s, l, near) > 0 && past(c, s, l, far) <= 0 ? n : 0,
      ),
    ],
    outputs: [
      worked(
        ...(['dry', 'N_d', 'count', '1'] as const),
        'fasteners that end in a dry zone',
        'N_d = Σ n, l > s (f₂ − c)',
        (_all, through) => through,
      ),
      worked(
        ...(['blind', 'N_w', 'count', '1'] as const),
        'fasteners that end blind within the wall to it',
        'N_w = Σ n, s (f₁ − c) < l ≤ s (f₂ − c)',
        (_all, _through, within) => within,
      ),
      worked(
        ...(['short', 'N_s', 'count', '1'] as const),
        'fasteners that do not reach such a wall',
        'N_s = N − N_d − N_w',
        (all, through, within) => all - through - within,
      ),
    ],
  },
  look: lookAtEnds,
  modelError: {},
  sources: [
    { title: 'Length against the distance of each wall', status: 'published' },
    {
      title: 'A fastener from outside into a dry volume is a leak path',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Straight along its direction from the seat under the head; walls flat and square to it; the end of a nut or rivet nut does not close the hole.',
    'Walls reach as far as their recorded coordinates, without end where none are recorded.',
  ],
  cautions: ['sealed-by-judgement'],
  checks: [
    {
      what: 'screws of 30, 80 and 67 mm through two walls, and a moved wall, by hand',
      source: 'own inputs',
      status: 'own inputs, published formula',
      test: 'test/engine/sealing/fastener-ends.test.ts',
    },
  ],
  example: {
    fasteners: [
      {
        ...{ name: 'S1', of: 'J102', seal: 'none', wall: 'inner wall', ends: 'cavity' },
        ...{ count: '14', seat: '537 ± 1 mm', sign: 'exactly -1', reach: '30 ± 0.3 mm' },
        ...{ near: '472 ± 0.5 mm', far: '469 ± 0.5 mm' },
      },
      {
        ...{ name: 'S3', of: 'J114', seal: 'none', wall: 'inner wall', ends: 'cells' },
        ...{ count: '6', seat: '537 ± 1 mm', sign: 'exactly -1', reach: '80 ± 0.3 mm' },
        ...{ near: '472 ± 0.5 mm', far: '469 ± 0.5 mm' },
      },
    ],
  },
});

function endWords(at: Finder, row: Id): string {
  const end = crossingOf(at, row)?.end;
  if (!end) return 'not known';
  return 'within' in end ? `within ${end.within}` : end.zone;
}
