/** A gas as a leak test uses it. */
export interface Gas {
  readonly id: string;
  /** kg/mol, IUPAC standard atomic weights. */
  readonly molarMass: number;
  /** Pa·s at 20 °C and 1 bar. */
  readonly viscosity: number;
}

/**
 * Gases of leak tests. Viscosities are handbook values from memory, to about 1 %; those of
 * helium and air (19.6 and 18.2 µPa·s) were seen with tables of conversion between test gases.
 * Water vapour is taken at its low pressure.
 */
export const GASES: readonly Gas[] = [
  { id: 'air', molarMass: 28.965e-3, viscosity: 18.2e-6 },
  { id: 'helium', molarMass: 4.0026e-3, viscosity: 19.6e-6 },
  { id: 'nitrogen', molarMass: 28.014e-3, viscosity: 17.5e-6 },
  { id: 'argon', molarMass: 39.948e-3, viscosity: 22.2e-6 },
  { id: 'hydrogen', molarMass: 2.016e-3, viscosity: 8.8e-6 },
  { id: 'neon', molarMass: 20.18e-3, viscosity: 31.3e-6 },
  { id: 'water vapour', molarMass: 18.015e-3, viscosity: 9.4e-6 },
];

export const gasOf = (id: string): Gas | undefined => GASES.find((g) => g.id === id);

/** J/(mol·K), exact since the SI of 2019. */
export const GAS_CONSTANT = 8.31446261815324;
/** m/s², standard. */
export const STANDARD_GRAVITY = 9.80665;
