import type { PlainInputs, ScalarInput, Solved, TermInput } from '../method.ts';
import { chosen, size } from './inputs.ts';
import { POISSON } from './material-inputs.ts';
import { finding, refused } from './outputs.ts';
import { type Edges, rigidMotions } from './ritz-plate.ts';
import type { Edge } from './strip-functions.ts';

/** Sides of a plate, and its bending stiffness as the plate questions take it. */
export const PLATE_INPUTS: readonly ScalarInput[] = [
  size('a', 'a', 'length of the plate along x', [20, 6000], 'envelope.length'),
  size('b', 'b', 'width of the plate along y', [20, 6000], 'envelope.width'),
  {
    in: 'scalar',
    name: 'D',
    symbol: 'D',
    kind: 'flexuralRigidity',
    unit: 'N.m',
    meaning: 'bending stiffness for a width',
    range: [0.1, 1e7],
    bounds: { above: 0 },
    where: 'plate-stiffness of the part; two-skin-stiffness gives that of two skins',
    find: (at) => at.ask('plate-stiffness', at.subject, 'D'),
  },
  POISSON,
];

/** Overall thickness, which sets how far the theory of small deflections reaches. */
export const DEPTH = size('depth', 't', 'overall thickness', [0.3, 200], 'thickness');

const EDGES = [
  ['x0', 'edge at x = 0'],
  ['xa', 'edge at x = a'],
  ['y0', 'edge at y = 0'],
  ['yb', 'edge at y = b'],
] as const;
const WORDS: readonly Edge[] = ['supported', 'clamped', 'free'];

/** How each of the four edges is held. */
export const EDGE_INPUTS: readonly TermInput[] = EDGES.map(([name, words]) => ({
  in: 'term',
  name,
  meaning: `how the ${words} is held`,
  options: WORDS,
  where: 'not in the record: look at the joint along the edge',
  find: (at) => at.word(''),
}));

/** The edges of plain inputs, or why there are none. */
export function edgesOf(x: PlainInputs): { edges: Edges } | { refusal: Solved } {
  const edge = (name: string) => WORDS.find((w) => w === x.terms[name]);
  const [x0, xa, y0, yb] = [edge('x0'), edge('xa'), edge('y0'), edge('yb')];
  if (x0 && xa && y0 && yb) return { edges: { x0, xa, y0, yb } };
  const lost = EDGES.find(([name]) => !edge(name));
  return {
    refusal: refused(
      'edge-not-named',
      lost?.[0] ?? '',
      `it is not said how the ${lost?.[1]} is held`,
      `Give ${WORDS.join(', ')}.`,
    ),
  };
}

/** Edges that keep the plate where it is, or why they do not. */
export function heldEdgesOf(x: PlainInputs): { edges: Edges } | { refusal: Solved } {
  const found = edgesOf(x);
  if ('refusal' in found || rigidMotions(found.edges) === 0) return found;
  return {
    refusal: refused(
      'plate-not-held',
      'x0',
      'the edges do not hold the plate: it can move without bending',
      'Clamp one edge, or support two.',
    ),
  };
}

/** Whether what a plate's shape hangs on is there: without it nothing can be worked out. */
export const sidesKnown = ({ scalars }: PlainInputs): boolean =>
  ['a', 'b', 'poisson'].every((name) => Number.isFinite(scalars[name]));

export const onAllEdges = ({ x0, xa, y0, yb }: Edges, edge: Edge): boolean =>
  [x0, xa, y0, yb].every((e) => e === edge);

/** Ratio of sides up to which the functions used are known to be enough. */
const LONGEST = 5;

/** A plate so long that the functions along it no longer resolve it. */
export function slender(a: number, b: number) {
  const ratio = Math.max(a / b, b / a);
  if (!(ratio > LONGEST)) return [];
  return [
    finding(
      'doubt',
      'plate-very-long',
      a > b ? 'a' : 'b',
      `the plate is ${Number(ratio.toPrecision(3))} times as long as wide; checked to ${LONGEST}`,
      'Take a length of five widths: further ones change little.',
    ),
  ];
}

/** The forms behind plate answers, in the words of the table beside them. */
export const ritzForm = (x: number, y: number): string =>
  `Ritz’s method, ${x} × ${y} Jacobi polynomials that keep to the edges`;

/** What every plate question takes for granted. */
export const PLATE_ASSUMPTIONS: readonly string[] = [
  'Thin flat plate of even stiffness, alike in all directions (Kirchhoff): no shear through the thickness, small deflections.',
  'Edges are held all along and do not yield; real joints lie between supported and clamped.',
  'In a study the plate is taken as solid, of the thickness read; for two skins on a core give D and mass of two-skin-stiffness in their place.',
];

const place = (name: 'atX' | 'atY', along: 'x' | 'y', side: 'a' | 'b'): ScalarInput =>
  chosen(
    {
      ...{ name, symbol: `${along}/${side}`, kind: 'ratio', unit: '1' },
      meaning: `place along ${along}, as a share of ${side}`,
      range: [0, 1],
      bounds: { atLeast: 0, below: 1.0000001 },
    },
    { written: 'exactly 0.5', x: 0.5 },
    'a choice of the question, not a reading: the middle unless said otherwise',
  );

/** Where the plate is looked at or loaded; its middle unless said otherwise. */
export const PLACE: readonly ScalarInput[] = [place('atX', 'x', 'a'), place('atY', 'y', 'b')];
