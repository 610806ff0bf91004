import type { DetailTable, OutputSpec } from '../method.ts';
import { areaMoments, reach } from './area-moments.ts';
import { exponents, formsTable, output } from './outputs.ts';
import { plasticModulus } from './plastic-modulus.ts';
import type { Shape } from './point.ts';

const POLYGON = 'polygon of the outline, shoelace';
const EXACT = 'polygon, exact; arcs as 48 chords a quarter';

export const AREA = output('area', 'A', 'area', 'cm2', 'area of the section', `A: ${POLYGON}`);
export const MASS = output(
  'lineMass',
  'm′',
  'lineMass',
  'kg/m',
  'mass for a metre of length',
  'm′ = ρ A',
);

/** Outputs of a profile about its horizontal axis y and its upright axis z, through the centroid. */
export const PROFILE_OUTPUTS: readonly OutputSpec[] = [
  AREA,
  ...(['y', 'z'] as const).flatMap((axis) => {
    const across = axis === 'y' ? 'z' : 'y';
    return [
      output(
        `I${axis}`,
        `I${axis}`,
        'secondMoment',
        'cm4',
        `second moment of area about the axis ${axis}`,
        `I${axis} = ∫ ${across}² dA: ${POLYGON}`,
      ),
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
  MASS,
];

/** The numbers of PROFILE_OUTPUTS for a shape with y to the right (x) and z up (y). */
export function profileNumbers(shape: Shape, density: number): Record<string, number> {
  const m = areaMoments(shape);
  const far = reach(shape, m.centroid);
  return {
    area: m.area,
    Iy: m.ixx,
    Wely: m.ixx / far.y,
    Wply: plasticModulus(shape, 'x'),
    Iz: m.iyy,
    Welz: m.iyy / far.x,
    Wplz: plasticModulus(shape, 'y'),
    lineMass: density * m.area,
  };
}

/** Principal moments as outputs, about axes of any direction. */
export const PRINCIPAL_OUTPUTS: readonly OutputSpec[] = [
  output(
    'I1',
    'I₁',
    'secondMoment',
    'cm4',
    'larger principal second moment of area',
    'I₁ = (Ix + Iy)/2 + √(((Ix − Iy)/2)² + Ixy²)',
  ),
  output(
    'I2',
    'I₂',
    'secondMoment',
    'cm4',
    'smaller principal second moment of area',
    'I₂ = (Ix + Iy)/2 − √(((Ix − Iy)/2)² + Ixy²)',
  ),
  output(
    'angle',
    'α',
    'angle',
    'deg',
    'from the horizontal axis to the axis of the larger moment, against the clock',
    'α = ½ atan2(−2 Ixy, Ix − Iy)',
  ),
];

/** Says which forms were used for a shape, with the exponent of each for all walls together. */
export function shapeForms(
  torsionForm: string,
  at: (factor: number) => { readonly shape: Shape; readonly torsion: number },
): DetailTable {
  const n = exponents((factor) => {
    const { shape, torsion } = at(factor);
    const { area, ixx, iyy } = areaMoments(shape);
    return { area, ixx, iyy, torsion };
  });
  return formsTable([
    ['area', EXACT, n.area],
    ['second moment, horizontal axis', EXACT, n.ixx],
    ['second moment, upright axis', EXACT, n.iyy],
    ['plastic moduli', 'polygon, line that halves the area by bisection', ''],
    ['torsion', torsionForm, n.torsion],
  ]);
}
