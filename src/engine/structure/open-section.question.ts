import { type PlainInputs, question, type Solved } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { principal } from './area-moments.ts';
import { exponents, formsTable, output, refused } from './outputs.ts';
import { PLANE_OUTPUTS, planeNumbers } from './plane-outputs.ts';
import { wallFigures } from './section-figure.ts';
import { AREA, PRINCIPAL_OUTPUTS } from './section-outputs.ts';
import { openWarping } from './shear-centre.ts';
import { connections, placedWalls, type ThinWalls, wallMoments } from './thin-walls.ts';
import { stripTorsion } from './torsion-forms.ts';
import { SCALE_INPUTS } from './traced.ts';
import { POINTS, wallsOf, wallTable } from './wall-inputs.ts';

const WALLS = 'slanted rectangles along the middle lines, exact; overlaps at corners count twice';

export default question({
  id: 'open-section',
  version: 1,
  title: 'Open thin-walled section as traced',
  wording: 'How stiff is an open thin-walled section, and where is its shear centre?',
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
        'It',
        'It',
        'secondMoment',
        'cm4',
        'torsion constant, open thin strips',
        'It = Σ l t³ / 3',
      ),
      output(
        'shearX',
        'xM',
        'length',
        'mm',
        'shear centre, to the right of the origin',
        'about the shear centre ∫ ω y dA = 0 and ∫ ω x dA = 0',
      ),
      output('shearY', 'yM', 'length', 'mm', 'shear centre, above the origin', 'as xM'),
      output(
        'Iw',
        'Iw',
        'warpingConstant',
        'cm6',
        'warping constant about the shear centre',
        'Iw = ∫ ω² dA',
      ),
    ],
    solve,
  },
  figures: (x, outs) => {
    const made = wallsOf(x);
    if (!outs.area || 'refusal' in made) return [];
    const { shearCentre } = openWarping(made.section);
    return wallFigures(made.section, { axes: ['x', 'y'], shearCentre });
  },
  modelError: {},
  sources: [
    {
      title: 'Vlasov, Thin-walled Elastic Beams, 2nd edition 1961',
      at: 'sectorial coordinates: shear centre and warping; torsion by strips',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Walls are thin: a tenth of their length or less.',
    'Torsion is that of open strips; where walls close a cell it would be far too low and is refused.',
    'Fillets are left out.',
  ],
  cautions: [],
  checks: [
    {
      what: 'channel, angle, slit tube: shear centre and warping by closed forms',
      source: 'closed forms for thin walls, textbooks of strength of materials',
      status: 'from memory, recomputed',
      test: 'test/published/thin-walls.test.ts',
    },
  ],
  example: {
    barLength: 'exactly 1 mm',
    barDrawn: 'exactly 1',
    points: [
      { point: 'A', x: '50 ± 0.5', y: '50 ± 0.5' },
      { point: 'B', x: '0 ± 0.5', y: '50 ± 0.5' },
      { point: 'C', x: '0 ± 0.5', y: '-50 ± 0.5' },
      { point: 'D', x: '50 ± 0.5', y: '-50 ± 0.5' },
    ],
    walls: [
      { from: 'A', to: 'B', thickness: '2 ± 0.05 mm' },
      { from: 'B', to: 'C', thickness: '2 ± 0.05 mm' },
      { from: 'C', to: 'D', thickness: '2 ± 0.05 mm' },
    ],
  },
});

function solve(x: PlainInputs): Solved {
  const made = wallsOf(x);
  if ('refusal' in made) return made.refusal;
  const { section } = made;
  if (connections(section).loops > 0)
    return refused(
      'section-is-closed',
      'walls',
      'the walls close a cell, so the open forms of torsion and shear centre do not hold',
      'Ask closed-section, or leave a slit where there is one.',
    );
  const m = wallMoments(section);
  const axes = principal(m);
  const { shearCentre, warping } = openWarping(section);
  return {
    outputs: {
      area: m.area,
      ...planeNumbers(m),
      I1: axes.major,
      I2: axes.minor,
      angle: axes.angle,
      It: stripTorsion(placedWalls(section)),
      shearX: shearCentre.x,
      shearY: shearCentre.y,
      Iw: warping,
    },
    detail: forms(section),
  };
}

function forms(section: ThinWalls) {
  const n = exponents((factor) => {
    const walls = section.walls.map((w) => ({ ...w, thickness: factor * w.thickness }));
    const thicker = { ...section, walls };
    const { area, ixx, iyy } = wallMoments(thicker);
    return { area, ixx, iyy, torsion: stripTorsion(placedWalls(thicker)) };
  });
  return formsTable([
    ['area', WALLS, n.area],
    ['second moment, axis x', WALLS, n.ixx],
    ['second moment, axis y', WALLS, n.iyy],
    ['torsion', 'open thin strips, Σ l t³ / 3; fillets left out', n.torsion],
    ['shear centre and warping', 'sectorial coordinates along the middle lines', ''],
  ]);
}
