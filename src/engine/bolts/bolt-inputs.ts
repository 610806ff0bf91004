import { CLASS_IDS, HEAD_FACES, propertyClass } from '../../data/index.ts';
import { type FastenerSpec, parseFastenerSpec } from '../joining/fastener-spec.ts';
import { threadPitch } from '../joining/thread-inputs.ts';
import type { Finder, Found, ScalarInput, TermInput } from '../method.ts';
import { stated } from '../structure/inputs.ts';

type Numbered = Omit<ScalarInput, 'in' | 'find' | 'where' | 'assumed'>;
const STATE = 'not in the record: state it';

/** A number that no record of joints holds. */
export const told = (input: Numbered): ScalarInput => stated(input, STATE);

const specOf = (at: Finder): FastenerSpec | undefined =>
  parseFastenerSpec(at.text(at.subject, 'spec').text);

/** What a table says of the fastener named by the joint's specification. */
function bySpec(
  at: Finder,
  words: string,
  source: string,
  take: (spec: FastenerSpec) => number | undefined,
): Found {
  const spec = specOf(at);
  const x = spec && take(spec);
  if (x === undefined) return at.missing(words, `${words}: not told by the specification`);
  return at.tabled({
    id: `bolt/${words}/${spec?.thread ?? ''}/${spec?.grade ?? ''}`,
    words: `${words} of ${spec?.thread ?? ''} ${spec?.grade ?? ''}`.trim(),
    x,
    spread: { s: 'exact' },
    how: 'supplied',
    source,
  });
}

const length = (
  name: string,
  symbol: string,
  meaning: string,
  range: ScalarInput['range'],
  where: string,
  find: ScalarInput['find'],
): ScalarInput => ({
  in: 'scalar',
  ...{ name, symbol, kind: 'length', unit: 'mm', meaning, range, where, find },
  bounds: { above: 0 },
});

export const DIAMETER = length(
  'd',
  'd',
  'nominal diameter of the thread',
  [1, 64],
  'specification of the joint',
  (at) => bySpec(at, 'nominal diameter', 'named in the specification', (s) => s.diameter),
);
export const PITCH = length(
  'P',
  'P',
  'pitch of the thread',
  [0.2, 6],
  'pitch of the joint, else by its size: ISO 261 coarse pitch unless another is named',
  (at) => threadPitch(at, at.subject),
);

const face = (side: 'outer' | 'hole') => (at: Finder) =>
  bySpec(
    at,
    side === 'outer' ? 'bearing face of the head' : 'clearance hole',
    'VDI 2230 tables, from memory',
    (s) => HEAD_FACES.get(Math.round(1e3 * s.diameter))?.[side],
  );
export const HEAD_OUTER = length(
  'dw',
  'd_w',
  'outer diameter of the bearing face under the head',
  [2, 120],
  'by the size: hexagon head, VDI 2230',
  face('outer'),
);
export const HEAD_HOLE = length(
  'dh',
  'd_h',
  'diameter of the clearance hole',
  [1, 80],
  'by the size: medium hole, VDI 2230',
  face('hole'),
);

export const STRENGTH_CLASS: TermInput = {
  in: 'term',
  name: 'class',
  meaning: 'property class',
  options: CLASS_IDS,
  where: 'specification of the joint',
  find: (at) => at.word(specOf(at)?.grade ?? at.given('class')),
};

export const YIELD: ScalarInput = {
  in: 'scalar',
  name: 'Rp',
  symbol: 'R_p',
  kind: 'stress',
  unit: 'MPa',
  meaning: 'yield or 0.2 % proof stress of the bolt',
  range: [100, 1500],
  bounds: { above: 0 },
  where: 'property class in the specification: ISO 898-1',
  find: (at) =>
    bySpec(at, 'yield stress', 'ISO 898-1', (s) => propertyClass(s.grade ?? '', s.diameter)?.yield),
};

export const ratio = (
  name: string,
  symbol: string,
  meaning: string,
  range: ScalarInput['range'],
): Numbered => ({
  ...{ name, symbol, kind: 'ratio', unit: '1', meaning, range },
  bounds: { atLeast: 0 },
});

/** A coefficient of friction where nobody measured one. */
export const friction = (name: string, symbol: string, where: 'thread' | 'head'): ScalarInput => {
  const meaning =
    where === 'thread' ? 'coefficient of friction in the thread' : 'and under the head';
  return {
    in: 'scalar',
    ...ratio(name, symbol, meaning, [0.04, 0.4]),
    where: 'taken as of plain or zinc-plated steel, lightly oiled (VDI 2230 class B, from memory)',
    assumed: '0.12 ± 0.02',
    find: (at) =>
      at.tabled({
        id: `friction/${where}`,
        words: `friction ${where === 'thread' ? 'in the thread' : 'under the head'}`,
        x: 0.12,
        spread: { s: 'normal', u: 0.02 },
        how: 'guessed',
        source: 'VDI 2230 friction class B, from memory',
      }),
  };
};

export const FORCE_EACH = (name: string, symbol: string, meaning: string): ScalarInput =>
  told({
    ...{ name, symbol, kind: 'force', unit: 'kN', meaning },
    ...{ range: [0.05, 1000], bounds: { above: 0 } },
  });
export const BOLT_COUNT: ScalarInput = {
  in: 'scalar',
  name: 'n',
  symbol: 'n',
  kind: 'count',
  unit: '1',
  meaning: 'bolts that share',
  range: [1, 5000],
  bounds: { above: 0 },
  where: 'count by holes of the joint',
  find: (at) => at.number(at.subject, 'count.holes'),
};
