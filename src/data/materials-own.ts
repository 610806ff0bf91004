import type { Material } from './material.ts';

/**
 * The shop's own materials: rows here stand before the published ones of the same words. Give
 * each value its source (test report, certificate, supplier and date) and its spread.
 */
export const OWN_MATERIALS: readonly Material[] = [];
