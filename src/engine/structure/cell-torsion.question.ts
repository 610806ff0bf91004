import { type PlainInputs, question, type ScalarColumn, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { cellTorsion } from './cells.ts';
import { scalarsOf, stated } from './inputs.ts';
import { isOutside, OUTSIDE, openCell, wallOf } from './named-walls.ts';
import { output, refused } from './outputs.ts';
import { word } from './traced.ts';

const column = (
  c: Pick<ScalarColumn, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range'>,
): ScalarColumn => ({
  in: 'scalar',
  ...c,
  bounds: { above: 0 },
  where: 'not in the record: off a drawing, or measured',
  find: (at) => at.missing(c.meaning, 'no walls are in the record'),
});

export default question({
  id: 'cell-torsion',
  version: 1,
  title: 'Torsion of closed cells by the lengths of their walls',
  wording:
    'How far does a section of closed cells twist under a torque, and what do its walls carry?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    stated(
      {
        name: 'torque',
        symbol: 'T',
        kind: 'torque',
        unit: 'N.m',
        meaning: 'torque',
        range: [0.1, 1e6],
      },
      'not in the record: state the load',
    ),
    {
      in: 'table',
      name: 'cells',
      meaning: 'one closed cell',
      where: 'not in the record: off a drawing, or measured',
      rows: () => [],
      columns: [
        word('cell', 'name of the cell'),
        column({
          name: 'area',
          symbol: 'A',
          kind: 'area',
          unit: 'mm2',
          meaning: 'area that the middle line encloses',
          range: [10, 1e7],
        }),
      ],
    },
    {
      in: 'table',
      name: 'walls',
      meaning: 'one wall, straight or curved',
      where: 'not in the record: off a drawing, or measured',
      rows: () => [],
      columns: [
        word('wall', 'name of the wall'),
        word('cell', 'cell on its one side'),
        word('other', `cell on its other side; ${OUTSIDE} or nothing where there is none`),
        column({
          name: 'length',
          symbol: 'l',
          kind: 'length',
          unit: 'mm',
          meaning: 'length of the wall',
          range: [1, 10000],
        }),
        column({
          name: 'thickness',
          symbol: 't',
          kind: 'length',
          unit: 'mm',
          meaning: 'thickness of the wall',
          range: [0.2, 60],
        }),
        column({
          name: 'shear',
          symbol: 'G',
          kind: 'stress',
          unit: 'GPa',
          meaning: 'shear modulus of the wall',
          range: [0.1, 120],
        }),
      ],
    },
  ],
  body: {
    body: 'solve',
    outputs: [
      output(
        'rigidity',
        'GIt',
        'torsionalRigidity',
        'kN.m2',
        'torsional stiffness, closed cells by Bredt and Batho',
        'GIt = 2 Σ Aᵢ qᵢ for a twist of 1 rad/m',
      ),
      output('twist', 'θ′', 'twistRate', 'deg/m', 'twist for a metre of length', 'θ′ = T / GIt'),
      output(
        'stress',
        'τ',
        'stress',
        'MPa',
        'largest shear stress of any wall',
        'τ = |qᵢ − qⱼ| / t',
      ),
    ],
    solve,
  },
  modelError: { rigidity: { relative: 0.01, sharedFraction: 0.5 } },
  sources: [
    {
      title: 'Megson, Aircraft Structures for Engineering Students, 4th edition 2007',
      at: 'example 23.2, p. 612',
      status: 'published',
    },
  ],
  assumptions: [
    'Closed cells only (Bredt and Batho): the shear flow is even through each wall, and walls are thin.',
    'The section keeps its shape, and no wall buckles or slips at its joints.',
  ],
  cautions: [],
  checks: [
    {
      what: 'three cells with walls of unequal shear modulus: flows, twist, stresses',
      source:
        'Megson, Aircraft Structures for Engineering Students, 4th edition, example 23.2, p. 612',
      status: 'seen',
      test: 'test/published/megson-cells.test.ts',
    },
  ],
  example: {
    torque: '500 ± 5 N.m',
    cells: [
      { cell: 'I', area: '4800 ± 50 mm2' },
      { cell: 'II', area: '4800 ± 50 mm2' },
    ],
    walls: [
      {
        wall: 'left',
        cell: 'I',
        other: 'outside',
        length: '200 ± 1 mm',
        thickness: '3 ± 0.05 mm',
        shear: '27 ± 0.5 GPa',
      },
      {
        wall: 'middle',
        cell: 'I',
        other: 'II',
        length: '80 ± 1 mm',
        thickness: '2 ± 0.05 mm',
        shear: '27 ± 0.5 GPa',
      },
      {
        wall: 'right',
        cell: 'II',
        other: 'outside',
        length: '200 ± 1 mm',
        thickness: '3 ± 0.05 mm',
        shear: '27 ± 0.5 GPa',
      },
    ],
  },
});

function solve(x: PlainInputs): Solved {
  const { torque } = scalarsOf(x, 'torque');
  const cells = x.tables.cells ?? [];
  const names = cells.map((c) => String(c.cell));
  const areas = cells.map((c) => Number(c.area));
  const rows = x.tables.walls ?? [];
  const lost = rows
    .flatMap((w) => [w.cell, w.other])
    .find((c) => !isOutside(c) && !names.includes(String(c)));
  if (lost !== undefined)
    return refused(
      'no-such-cell',
      'walls',
      'a wall names a cell that is not listed',
      `List the cell, or write ${OUTSIDE}.`,
      String(lost),
    );
  const walls = rows.map((w) => wallOf(w, names));
  const open = openCell(areas, walls);
  if (open !== undefined)
    return refused(
      'section-is-open',
      'cells',
      open.what(names),
      'List every wall of the cell; an open section has no shear flow around it.',
      names[open.cell],
    );
  const solved = cellTorsion(areas, walls);
  if (!solved)
    return refused(
      'section-is-open',
      'cells',
      'the walls do not close the cells',
      'List every wall of each cell.',
    );
  const twist = torque / solved.rigidity;
  const flow = (i: number) => twist * (solved.flows[i] ?? 0);
  const carried = walls.map((w) => Math.abs(flow(w.sides[0]) - flow(w.sides[1])));
  return {
    outputs: {
      rigidity: solved.rigidity,
      twist,
      stress: Math.max(...carried.map((q, i) => q / (walls[i]?.thickness ?? 0))),
    },
    detail: {
      title: 'Shear flow and stress of each wall; form: closed cells by Bredt and Batho',
      columns: [
        { name: 'wall' },
        { name: 'shear flow', kind: 'lineLoad', unit: 'N/mm' },
        { name: 'shear stress', kind: 'stress', unit: 'MPa' },
      ],
      rows: walls.map((w, i) => [w.name, carried[i] ?? 0, (carried[i] ?? 0) / w.thickness]),
    },
  };
}
