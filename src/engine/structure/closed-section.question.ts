import { type PlainInputs, question, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { principal } from './area-moments.ts';
import { type CellWall, cellTorsion } from './cells.ts';
import { exponents, formsTable, output, refused } from './outputs.ts';
import { PLANE_OUTPUTS, planeNumbers } from './plane-outputs.ts';
import { wallFigures } from './section-figure.ts';
import { AREA, PRINCIPAL_OUTPUTS } from './section-outputs.ts';
import { placedWalls, type ThinWalls, wallMoments } from './thin-walls.ts';
import { stripTorsion } from './torsion-forms.ts';
import { SCALE_INPUTS } from './traced.ts';
import { type TracedCells, traceCells } from './wall-cells.ts';
import { POINTS, wallsOf, wallTable } from './wall-inputs.ts';

const WALLS = 'slanted rectangles along the middle lines, exact; overlaps at corners count twice';

export default question({
  id: 'closed-section',
  version: 1,
  title: 'Closed thin-walled section of one or more cells, as traced',
  wording: 'How stiff is a closed section of thin walls in bending and in torsion?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [...SCALE_INPUTS, POINTS, wallTable()],
  body: {
    body: 'solve',
    outputs: [
      { ...AREA, shown: 'A = Σ l t' },
      ...PLANE_OUTPUTS,
      ...PRINCIPAL_OUTPUTS,
      output(
        'enclosed',
        'Ah',
        'area',
        'cm2',
        'area that the cells enclose',
        'Ah = Σ Aᵢ, along the middle lines',
      ),
      output(
        'It',
        'It',
        'secondMoment',
        'cm4',
        'torsion constant, closed cells by Bredt and Batho, free walls as strips',
        'Σ (qᵢ − qⱼ) l/t = 2 Aᵢ for every cell; It = 2 Σ Aᵢ qᵢ + Σ free l t³ / 3',
      ),
    ],
    solve,
  },
  figures: (x, outs) => {
    const made = wallsOf(x);
    return !outs.area || 'refusal' in made ? [] : wallFigures(made.section, { axes: ['x', 'y'] });
  },
  modelError: { It: { relative: 0.01, sharedFraction: 0.5 } },
  sources: [
    {
      title:
        'Bredt 1896 and Batho 1916, as in Megson, Aircraft Structures for Engineering Students, 4th edition',
      at: 'torsion of multi-cell sections',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Walls are thin, of one material, and closed without slip at every point.',
    'The shear flow is even through the wall: the wall’s own strip torsion, a per cent or less of a thin cell, is left out.',
    'The section keeps its shape (bulkheads or end plates).',
  ],
  cautions: [],
  checks: [
    {
      what: 'rectangular cell by Bredt’s closed form; two equal cells, whose common wall carries nothing',
      source: 'Bredt’s formula, symmetry',
      status: 'own inputs, published formula',
      test: 'test/published/thin-walls.test.ts',
    },
  ],
  example: {
    barLength: 'exactly 1 mm',
    barDrawn: 'exactly 1',
    points: [
      { point: 'A', x: '0 ± 0.5', y: '0 ± 0.5' },
      { point: 'B', x: '60 ± 0.5', y: '0 ± 0.5' },
      { point: 'C', x: '120 ± 0.5', y: '0 ± 0.5' },
      { point: 'D', x: '120 ± 0.5', y: '80 ± 0.5' },
      { point: 'E', x: '60 ± 0.5', y: '80 ± 0.5' },
      { point: 'F', x: '0 ± 0.5', y: '80 ± 0.5' },
    ],
    walls: [
      { from: 'A', to: 'B', thickness: '3 ± 0.05 mm' },
      { from: 'B', to: 'C', thickness: '3 ± 0.05 mm' },
      { from: 'C', to: 'D', thickness: '3 ± 0.05 mm' },
      { from: 'D', to: 'E', thickness: '3 ± 0.05 mm' },
      { from: 'E', to: 'F', thickness: '3 ± 0.05 mm' },
      { from: 'F', to: 'A', thickness: '3 ± 0.05 mm' },
      { from: 'B', to: 'E', thickness: '2 ± 0.05 mm' },
    ],
  },
});

/** Torsion constant, m⁴: cells by Bredt and Batho with G = 1, walls of no cell as open strips. */
function torsionOf(section: ThinWalls, cells: TracedCells): number {
  const placed = placedWalls(section);
  const inCells = (i: number) => cells.sides[i]?.[0] !== cells.sides[i]?.[1];
  const walls = placed.map(
    ({ length, thickness }, i): CellWall => ({
      flexibility: length / thickness,
      sides: cells.sides[i] ?? [-1, -1],
    }),
  );
  const closed = cellTorsion(cells.areas, walls)?.rigidity ?? Number.NaN;
  return closed + stripTorsion(placed.filter((_, i) => !inCells(i)));
}

function solve(x: PlainInputs): Solved {
  const made = wallsOf(x);
  if ('refusal' in made) return made.refusal;
  const { section } = made;
  const cells = traceCells(section);
  if (cells.areas.length === 0)
    return refused(
      'section-is-open',
      'walls',
      'the walls close no cell, so the formulas of Bredt and Batho do not hold',
      'Ask open-section, or trace the wall that closes the cell.',
    );
  const m = wallMoments(section);
  const axes = principal(m);
  return {
    outputs: {
      area: m.area,
      ...planeNumbers(m),
      I1: axes.major,
      I2: axes.minor,
      angle: axes.angle,
      enclosed: cells.areas.reduce((sum, a) => sum + a, 0),
      It: torsionOf(section, cells),
    },
    detail: forms(section, cells),
  };
}

function forms(section: ThinWalls, cells: TracedCells) {
  const n = exponents((factor) => {
    const walls = section.walls.map((w) => ({ ...w, thickness: factor * w.thickness }));
    const thicker = { ...section, walls };
    const { area, ixx, iyy } = wallMoments(thicker);
    return { area, ixx, iyy, torsion: torsionOf(thicker, cells) };
  });
  const count = `${cells.areas.length} closed cell${cells.areas.length === 1 ? '' : 's'}`;
  return formsTable([
    ['area', WALLS, n.area],
    ['second moment, axis x', WALLS, n.ixx],
    ['second moment, axis y', WALLS, n.iyy],
    ['torsion', `${count} by Bredt and Batho; walls of no cell as strips`, n.torsion],
  ]);
}
