/**
 * Other designs for the same functions of VAN-27 (invented). Prices in units of account `u` or
 * in seconds of work; `halfWidthPercent` is rectangular.
 */
export const ALTERNATIVES = {
  packFloor: {
    sizeM: { x: 1.52, y: 1.25 },
    /** What a thin stamped floor needs beneath it. */
    stoneShield: { kg: [8, 14], priceU: [25, 45] },
    designs: [
      { words: 'welded planks, as built', material: 'aluminium extrusion', kg: 24.55 },
      {
        words: 'stamped aluminium',
        material: 'aluminium sheet',
        thicknessMm: 2.5,
        needsShield: true,
      },
      { words: 'stamped steel', material: 'steel sheet', thicknessMm: 1.2, needsShield: true },
      {
        words: 'moulded glass-fibre plate, edge trimmed and sealed',
        material: 'glass-fibre moulding charge',
        thicknessMm: 5.2,
        modulusGPa: 20,
        shearModulusGPa: 7.5,
        densityKgPerM3: 1900,
        trimmedM: 5.54,
      },
    ],
  },
  /** Cord, its groove and the time to part the lid in service belong to each. */
  lidJoint: {
    halfWidthPercent: 10,
    designs: [
      {
        words: '62 screws into rivet nuts, as built',
        count: 62,
        fastener: { priceU: 0.05, timeS: 4.6 },
        rivetNut: { priceU: 0.09, timeS: 3.2 },
      },
      {
        words: '62 screws into tapped holes',
        count: 62,
        fastener: { priceU: 0.05, timeS: 4.6 },
        machiningEachS: 3,
      },
      {
        words: '46 screws into tapped holes',
        count: 46,
        fastener: { priceU: 0.05, timeS: 4.6 },
        machiningEachS: 3,
      },
      { words: '58 spring clips', count: 58, fastener: { priceU: 0.12, timeS: 2.4 } },
    ],
  },
  toeAdjustment: ['eccentric bolt', 'shims', 'threaded link M14x1.5'],
} as const;
