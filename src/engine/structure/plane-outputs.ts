import type { OutputSpec } from '../method.ts';
import type { AreaMoments } from './area-moments.ts';
import { output } from './outputs.ts';

/** Centroid and second moments about axes as drawn, through the centroid. */
export const PLANE_OUTPUTS: readonly OutputSpec[] = [
  output('cx', 'xS', 'length', 'mm', 'centroid, to the right of the origin', 'xS = ∫ x dA / A'),
  output('cy', 'yS', 'length', 'mm', 'centroid, above the origin', 'yS = ∫ y dA / A'),
  output(
    'Ix',
    'Ix',
    'secondMoment',
    'cm4',
    'second moment of area about the axis x',
    'Ix = ∫ y² dA',
  ),
  output(
    'Iy',
    'Iy',
    'secondMoment',
    'cm4',
    'second moment of area about the axis y',
    'Iy = ∫ x² dA',
  ),
  output('Ixy', 'Ixy', 'secondMoment', 'cm4', 'product moment of area', 'Ixy = ∫ x y dA'),
];

/** The numbers of PLANE_OUTPUTS. */
export const planeNumbers = ({ centroid, ixx, iyy, ixy }: AreaMoments) => ({
  cx: centroid.x,
  cy: centroid.y,
  Ix: ixx,
  Iy: iyy,
  Ixy: ixy,
});
