import { z } from 'zod';
import { kind, number } from '../../schema/index.ts';

/** What an answer draws: the same shapes as in src/engine/figure.ts, which a test of types holds to. */
const text = z.string();
const head = { title: text, alt: text };
const numberShape = {
  x: number,
  u: z.union([number, z.literal('incomplete')]).exactOptional(),
  knownU: number.exactOptional(),
};
const figureNumber = z.strictObject(numberShape);

const point = z.tuple([number, number]);
const line = z.enum(['continuous', 'dashed', 'chain', 'double chain']);
const hatch = z.enum([
  'none',
  'metal',
  'metal beside',
  'polymer',
  'rubber',
  'composite',
  'foam',
  'liquid',
  'solid',
]);

const s = <const S extends string>(name: S) => z.literal(name);
const area = z.strictObject({ s: s('area'), rings: z.array(z.array(point)), hatch });
const drawnLine = z.strictObject({ s: s('line'), points: z.array(point), line });
const circle = z.strictObject({ s: s('circle'), at: point, r: number, line });
const mark = z.strictObject({
  s: s('mark'),
  at: point,
  sign: z.enum(['centroid', 'other centre', 'point']),
  label: text,
});
const axis = z.strictObject({ s: s('axis'), at: point, angle: number, label: text });
const dimension = z.strictObject({
  s: s('dimension'),
  from: point,
  to: point,
  along: z.enum(['x', 'y']),
});
const words = z.strictObject({ s: s('text'), at: point, text });
const vector = z.strictObject({
  s: s('vector'),
  at: point,
  by: point,
  label: text.exactOptional(),
});

const plainShapes = [area, drawnLine, circle, mark, axis, dimension, words] as const;
const axes = z.strictObject({ x: text, y: text }).exactOptional();

const drawing = z.strictObject({
  f: z.literal('drawing'),
  ...head,
  kind,
  unit: text,
  axes,
  shapes: z.array(z.discriminatedUnion('s', [...plainShapes, vector])),
  vectors: z.strictObject({ kind, unit: text }).exactOptional(),
});

const bars = z.strictObject({
  f: z.literal('bars'),
  ...head,
  kind,
  unit: text,
  from: z.enum(['zero', 'nearest']),
  rows: z.array(
    z.strictObject({
      label: text,
      number: figureNumber.exactOptional(),
      word: text.exactOptional(),
      start: number.exactOptional(),
    }),
  ),
  lines: z.array(z.strictObject({ label: text, x: number })).exactOptional(),
  gap: z
    .strictObject({ of: number, less: number, number: figureNumber, word: text.exactOptional() })
    .exactOptional(),
});

const strong = z.literal(true).exactOptional();
const graph = z.strictObject({
  f: z.literal('graph'),
  ...head,
  kind: kind.exactOptional(),
  unit: text.exactOptional(),
  nodes: z.array(
    z.strictObject({
      id: text,
      label: text,
      number: figureNumber.exactOptional(),
      strong,
    }),
  ),
  edges: z.array(
    z.strictObject({
      from: text,
      to: text,
      label: text.exactOptional(),
      line: line.exactOptional(),
      strong,
    }),
  ),
});

const isolines = z.strictObject({
  f: z.literal('isolines'),
  ...head,
  kind,
  unit: text,
  x: z.array(number),
  y: z.array(number),
  lengthUnit: text,
  axes,
  values: z.array(z.array(number)),
  levels: z.array(number),
  shapes: z.array(z.discriminatedUnion('s', [...plainShapes])).exactOptional(),
});

const plotAxis = z.strictObject({ label: text, kind, unit: text });
const linePlot = z.strictObject({
  f: z.literal('line'),
  ...head,
  x: plotAxis,
  y: plotAxis,
  series: z.array(
    z.strictObject({
      label: text,
      line,
      points: z.array(z.strictObject({ ...numberShape, at: number })),
    }),
  ),
  demands: z.array(z.strictObject({ label: text, y: number })).exactOptional(),
  marks: z.array(z.strictObject({ label: text, number: figureNumber })).exactOptional(),
});

export const figure = z
  .discriminatedUnion('f', [drawing, bars, graph, isolines, linePlot])
  .meta({ id: 'Figure' });
