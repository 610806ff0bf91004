/** Metric threads of the ISO profile (ISO 68-1); lengths in any one unit. */

/** Pitch diameter of the basic profile, d₂ = D₂. */
export const pitchDiameter = (d: number, P: number): number => d - 0.649519 * P;
/** Root diameter of the bolt, d₃. */
export const rootDiameter = (d: number, P: number): number => d - 1.226869 * P;
/** Minor diameter of the nut, D₁. */
export const minorDiameter = (d: number, P: number): number => d - 1.082532 * P;

/** Diameter of the stress area, (d₂ + d₃) / 2. */
export const stressDiameter = (d: number, P: number): number =>
  (pitchDiameter(d, P) + rootDiameter(d, P)) / 2;
/** Nominal stress area after ISO 898-1. */
export const stressArea = (d: number, P: number): number =>
  (Math.PI / 4) * stressDiameter(d, P) ** 2;

/** Torque in the thread by unit of preload: P/2π + 0.577 d₂ μ (ISO 16047). */
export const threadArm = (d: number, P: number, mu: number): number =>
  P / (2 * Math.PI) + 0.577 * pitchDiameter(d, P) * mu;

/** Largest stress over mean tension while a bolt is turned (VDI 2230). */
export function twistFactor(d: number, P: number, mu: number): number {
  const d2 = pitchDiameter(d, P);
  const shear = 1.5 * (d2 / stressDiameter(d, P)) * (P / (Math.PI * d2) + 1.155 * mu);
  return Math.sqrt(1 + 3 * shear ** 2);
}
