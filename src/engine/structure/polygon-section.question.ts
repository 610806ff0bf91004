import { type PlainInputs, type PlainRow, question, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { areaMoments, principal, reach } from './area-moments.ts';
import { output, refused } from './outputs.ts';
import { PLANE_OUTPUTS, planeNumbers } from './plane-outputs.ts';
import { plasticModulus } from './plastic-modulus.ts';
import type { Shape } from './point.ts';
import { shapeFault } from './ring-faults.ts';
import { sectionFigures } from './section-figure.ts';
import { AREA, PRINCIPAL_OUTPUTS } from './section-outputs.ts';
import { coordinate, pointOf, SCALE_INPUTS, scaleOf, word } from './traced.ts';

const OUTLINE = 'outline';

export default question({
  id: 'polygon-section',
  version: 1,
  title: 'Section of any outline, with holes',
  wording: 'What are the area and the second moments of a section as traced?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    ...SCALE_INPUTS,
    {
      in: 'table',
      name: 'points',
      meaning: 'one corner, in the order in which the line is walked',
      where: 'not in the record: traced on a photograph with a scale bar, or off a drawing',
      rows: () => [],
      columns: [
        word('line', `${OUTLINE}, or the name of a hole`),
        coordinate('x', 'to the right'),
        coordinate('y', 'upwards'),
      ],
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      AREA,
      ...PLANE_OUTPUTS,
      ...PRINCIPAL_OUTPUTS,
      ...(['x', 'y'] as const).flatMap((axis) => {
        const across = axis === 'x' ? 'y' : 'x';
        return [
          output(
            `Wel${axis}`,
            `Wel,${axis}`,
            'sectionModulus',
            'cm3',
            `elastic section modulus about the axis ${axis}, smaller of the two sides`,
            `Wel,${axis} = I${axis} / |${across}|max`,
          ),
          output(
            `Wpl${axis}`,
            `Wpl,${axis}`,
            'sectionModulus',
            'cm3',
            `plastic section modulus about the axis ${axis}`,
            `Wpl,${axis} = ∫ |${across} − ${across}₀| dA, ${across}₀ halving the area`,
          ),
        ];
      }),
    ],
    solve,
  },
  figures: (x, outs) =>
    outs.area
      ? sectionFigures(shapeOf(x.tables.points ?? [], scaleOf(x)), { axes: ['x', 'y'] })
      : [],
  modelError: {},
  sources: [{ title: 'Shoelace formulas for polygons', status: 'common practice, no source' }],
  assumptions: [
    'Straight lines between the points; the sense of walking does not matter.',
    'No torsion constant is given: it does not follow from the outline. For thin walls ask open-section or closed-section.',
    'Plastic moduli hold for bending held to the plane of x or y.',
  ],
  cautions: [],
  checks: [
    {
      what: 'triangle, hexagon, rectangle with a hole, each walked both ways',
      source: 'closed forms of the plane figures',
      status: 'own inputs, published formula',
      test: 'test/published/polygon-formulas.test.ts',
    },
  ],
  example: {
    barLength: '50 ± 0.2 mm',
    barDrawn: '412 ± 1',
    points: [
      { line: 'outline', x: '0 ± 2', y: '0 ± 2' },
      { line: 'outline', x: '824 ± 2', y: '0 ± 2' },
      { line: 'outline', x: '824 ± 2', y: '495 ± 2' },
      { line: 'outline', x: '0 ± 2', y: '495 ± 2' },
      { line: 'bore', x: '83 ± 2', y: '82 ± 2' },
      { line: 'bore', x: '742 ± 2', y: '82 ± 2' },
      { line: 'bore', x: '742 ± 2', y: '412 ± 2' },
      { line: 'bore', x: '83 ± 2', y: '412 ± 2' },
    ],
  },
});

/** Rows of one line each; a row without a name belongs to the outline. */
function shapeOf(rows: readonly PlainRow[], scale: number): Shape {
  const lines = new Map<string, PlainRow[]>([[OUTLINE, []]]);
  for (const row of rows) {
    const name = String(row.line || OUTLINE);
    lines.set(name, [...(lines.get(name) ?? []), row]);
  }
  const [outline = [], ...holes] = [...lines.values()].map((own) =>
    own.map((row) => pointOf(row, scale)),
  );
  return { outline, holes };
}

function solve(x: PlainInputs): Solved {
  const shape = shapeOf(x.tables.points ?? [], scaleOf(x));
  const fault = shapeFault(shape);
  if (fault)
    return refused(
      'no-such-section',
      'points',
      fault,
      'Trace the lines again, in order, and close no line twice.',
    );
  const m = areaMoments(shape);
  const axes = principal(m);
  const far = reach(shape, m.centroid);
  return {
    outputs: {
      area: m.area,
      ...planeNumbers(m),
      I1: axes.major,
      I2: axes.minor,
      angle: axes.angle,
      Welx: m.ixx / far.y,
      Wplx: plasticModulus(shape, 'x'),
      Wely: m.iyy / far.x,
      Wply: plasticModulus(shape, 'y'),
    },
  };
}
