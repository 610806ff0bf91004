import { output } from './outputs.ts';

export const BENDING = output(
  'D',
  'D',
  'flexuralRigidity',
  'N.m',
  'bending stiffness for a width',
  'D',
);
export const SHEAR = output(
  'Gt',
  'G t',
  'stiffness',
  'kN/mm',
  'shear stiffness in the plane',
  'G t',
);
export const IN_THICKNESSES = output(
  'inThicknesses',
  'w/t',
  'ratio',
  '1',
  'that deflection in thicknesses; above a half the plate stretches and gives way less',
  'w / t',
);
export const AREAL_MASS = output('arealMass', 'm', 'arealMass', 'kg/m2', 'mass for an area', 'm');
