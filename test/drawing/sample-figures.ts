import type { Layout } from '../../src/drawing/index.ts';
import type { Bars, Drawing, Figure, Graph, Isolines, LinePlot } from '../../src/engine/index.ts';
import { formatQuantity } from '../../src/quantity/index.ts';

/** One figure of each kind, all made up, with every shape and every way a number can be known. */

export const say: Layout['say'] = ({ x, u, knownU, kind, unit }) => {
  const spread = u === 'incomplete' ? knownU || undefined : u;
  const text = formatQuantity({ x, u: spread, kind, unit }).split(',')[0] ?? '';
  return { text, lack: u === 'incomplete' ? 'not complete' : '' };
};

export const section: Drawing = {
  f: 'drawing',
  title: 'Section of a made-up sill',
  alt: 'A closed profile with two cells, its axes and centres.',
  kind: 'length',
  unit: 'mm',
  axes: { x: 'y, to the right', y: 'z, up' },
  shapes: [
    {
      s: 'area',
      rings: [
        [
          [0, 0],
          [0.12, 0],
          [0.12, 0.16],
          [0.03, 0.18],
          [0, 0.15],
        ],
        [
          [0.004, 0.004],
          [0.116, 0.004],
          [0.116, 0.08],
          [0.004, 0.08],
        ],
        [
          [0.004, 0.084],
          [0.116, 0.084],
          [0.116, 0.156],
          [0.031, 0.175],
          [0.004, 0.149],
        ],
      ],
      hatch: 'metal',
    },
    {
      s: 'area',
      rings: [
        [
          [0.02, 0.02],
          [0.1, 0.02],
          [0.1, 0.06],
          [0.02, 0.06],
        ],
      ],
      hatch: 'foam',
    },
    {
      s: 'line',
      points: [
        [-0.02, 0.09],
        [0.14, 0.09],
      ],
      line: 'dashed',
    },
    {
      s: 'line',
      points: [
        [0.13, 0],
        [0.15, 0],
        [0.15, 0.1],
      ],
      line: 'double chain',
    },
    { s: 'circle', at: [0.06, 0.12], r: 0.012, line: 'continuous' },
    { s: 'axis', at: [0.062, 0.083], angle: 0.12, label: '1' },
    { s: 'axis', at: [0.062, 0.083], angle: 0.12 + Math.PI / 2, label: '2' },
    { s: 'mark', at: [0.062, 0.083], sign: 'centroid', label: 'centroid' },
    { s: 'mark', at: [0.066, 0.085], sign: 'other centre', label: 'shear centre' },
    { s: 'mark', at: [0.12, 0.16], sign: 'point', label: 'A' },
    { s: 'dimension', from: [0, 0], to: [0.12, 0], along: 'x' },
    { s: 'dimension', from: [0.116, 0], to: [0.12, 0], along: 'x' },
    { s: 'dimension', from: [0, 0], to: [0.03, 0.18], along: 'y' },
    { s: 'text', at: [0.06, 0.04], text: 'foam' },
  ],
};

export const residuals: Drawing = {
  f: 'drawing',
  title: 'Residuals at the pads',
  alt: 'An arrow at each pad.',
  kind: 'length',
  unit: 'mm',
  axes: { x: 'X, rearward', y: 'Y, to the right' },
  vectors: { kind: 'length', unit: 'mm' },
  shapes: [
    {
      s: 'line',
      points: [
        [0, -0.8],
        [2.9, -0.8],
        [2.9, 0.8],
        [0, 0.8],
        [0, -0.8],
      ],
      line: 'continuous',
    },
    { s: 'vector', at: [0, 0.8], by: [0.0002, 0.0011], label: 'P1' },
    { s: 'vector', at: [2.9, 0.8], by: [-0.0007, 0.0002], label: 'P2' },
    { s: 'vector', at: [2.9, -0.8], by: [0.0015, 0] },
    { s: 'vector', at: [0, -0.8], by: [0, 0] },
  ],
};

export const options: Bars = {
  f: 'bars',
  title: 'Options by mass',
  alt: 'A bar for each option, the lightest first.',
  kind: 'mass',
  unit: 'kg',
  from: 'zero',
  rows: [
    { label: 'folded aluminium sandwich', number: { x: 4.21, u: 0.12 }, word: 'indicated' },
    {
      label: 'steel sheet with beads and a very long name that goes over two lines of the label',
      number: { x: 6.05, u: 0.31 },
    },
    {
      label: 'composite',
      number: { x: 5.2, u: 'incomplete', knownU: 0.9 },
      word: 'core not known',
    },
    { label: 'magnesium', number: { x: 4.6 } },
    { label: 'wood' },
  ],
  lines: [{ label: 'at most 5.5 kg', x: 5.5 }],
};

export const residualBars: Bars = {
  f: 'bars',
  title: 'Residual of each module',
  alt: 'Modules less their parts.',
  kind: 'mass',
  unit: 'kg',
  from: 'zero',
  rows: [
    { label: '10 Front', number: { x: 0.05, u: 0.08 } },
    { label: '40 Floor', number: { x: -1.93, u: 0.11 }, word: 'different' },
    { label: '80 Electrics', number: { x: 0.31, u: 0.2 } },
  ],
};

export const balance: Bars = {
  f: 'bars',
  title: 'Balance: gap',
  alt: 'Parts and scales on one scale.',
  kind: 'mass',
  unit: 'kg',
  from: 'nearest',
  rows: [
    { label: 'mass of the parts', number: { x: 1645.29, u: 0.2 } },
    { label: 'mass on the scales', number: { x: 1646.5, u: 1 } },
  ],
  gap: { of: 0, less: 1, number: { x: -1.21, u: 1.02 } },
};

export const removal: Graph = {
  f: 'graph',
  title: 'What has to come off first',
  alt: 'Eight steps from the trim to the module.',
  kind: 'time',
  unit: 'min',
  nodes: [
    { id: 'a', label: 'Sill trim left', number: { x: 60, u: 12 } },
    { id: 'b', label: 'Sill trim right', number: { x: 60, u: 12 } },
    { id: 'c', label: 'Seat front left with its harness', number: { x: 300, u: 40 }, strong: true },
    { id: 'd', label: 'Carpet', number: { x: 240, u: 'incomplete', knownU: 30 }, strong: true },
    { id: 'e', label: 'Service plug', number: { x: 30, u: 5 } },
    { id: 'f', label: 'Underbody shield', number: { x: 420, u: 60 } },
    { id: 'g', label: 'Pack', number: { x: 900, u: 90 }, strong: true },
    { id: 'h', label: 'Lid of the pack', number: { x: 1200, u: 200 }, strong: true },
  ],
  edges: [
    { from: 'a', to: 'd' },
    { from: 'b', to: 'd' },
    { from: 'c', to: 'd', strong: true },
    { from: 'd', to: 'g', strong: true },
    { from: 'e', to: 'g', label: '10 min wait' },
    { from: 'f', to: 'g' },
    { from: 'g', to: 'h', strong: true },
    { from: 'e', to: 'h' },
  ],
};

const across = Array.from({ length: 41 }, (_, i) => (1.2 * i) / 40);
const along = Array.from({ length: 29 }, (_, i) => (0.8 * i) / 28);
export const field: Isolines = {
  f: 'isolines',
  title: 'Deflection of a made-up plate',
  alt: 'Closed lines about the middle, where it is deepest.',
  kind: 'length',
  unit: 'mm',
  x: across,
  y: along,
  lengthUnit: 'mm',
  axes: { x: 'x', y: 'y' },
  values: along.map((y) =>
    across.map((x) => 0.0021 * Math.sin((Math.PI * x) / 1.2) * Math.sin((Math.PI * y) / 0.8)),
  ),
  levels: [0.0005, 0.001, 0.0015, 0.002],
  shapes: [
    {
      s: 'line',
      points: [
        [0, 0],
        [1.2, 0],
        [1.2, 0.8],
        [0, 0.8],
        [0, 0],
      ],
      line: 'continuous',
    },
    { s: 'mark', at: [0.6, 0.4], sign: 'point', label: '2.1 mm' },
    { s: 'dimension', from: [0, 0], to: [1.2, 0], along: 'x' },
    { s: 'dimension', from: [0, 0], to: [0, 0.8], along: 'y' },
  ],
};

const pieces = Array.from({ length: 11 }, (_, i) => 1000 * i);
export const breakEven: LinePlot = {
  f: 'line',
  title: 'Cost over pieces',
  alt: 'Two straight lines that cross.',
  x: { label: 'pieces', kind: 'count', unit: '1' },
  y: { label: 'cost a piece', kind: 'money', unit: '{u}' },
  series: [
    {
      label: 'cast',
      line: 'continuous',
      points: pieces.map((at) => ({ at, x: 40 - 0.002 * at, u: 2 })),
    },
    {
      label: 'folded sheet',
      line: 'dashed',
      points: pieces.map((at) => ({ at, x: 24 + 0.0005 * at, u: 1 + at / 8000 })),
    },
  ],
  demands: [{ label: 'price of today', y: 33 }],
  marks: [{ label: 'same cost at', number: { x: 6400, u: 900 } }],
};

export const SAMPLES: readonly Figure[] = [
  section,
  residuals,
  options,
  residualBars,
  balance,
  removal,
  field,
  breakEven,
];
