/**
 * VAN-27: a made-up compact electric delivery van. Everything here is invented; no figure is of
 * any real vehicle, and none of it is proof of anything.
 *
 * Units are in the names (mm, kg, deg …). `u` is a standard uncertainty in the unit of what it
 * stands beside, unless the name says percent, which is a rectangular half-width.
 * Frame: X rearward from the front spindle, Y to the right of the centre plane, Z up from the
 * ground at kerb load.
 */
export const VAN_27 = {
  name: 'compact electric delivery van (invented)',
  seats: 2,
  drive: 'front',
  wheelbaseMm: 2920,
  wheelbaseUMm: 2,
  overhangFrontMm: 820,
  overhangRearMm: 800,
  widthMm: 1850,
  heightMm: 1830,
  trackFrontMm: 1550,
  trackRearMm: 1560,
  trackUMm: 3,
  /** Loaded. */
  tyreRadiusMm: 325,
  tyreRadiusUMm: 2,
  payloadKg: 650,
  hoistPads: { xMm: [560, 2380], yMm: [-560, 560] },

  cornerScales: { resolutionKg: 0.5, uKg: 0.5, kg: { FL: 462.5, FR: 457, RL: 353.5, RR: 372.5 } },
  axleLift: {
    words: 'rear raised, suspension blocked, front axle on the scales',
    levelFrontKg: 919.5,
    /** Of each difference from the level reading. */
    gainUKg: 0.7,
    angleUDeg: 0.1,
    raised: [
      { angleDeg: 4, frontKg: 927.3 },
      { angleDeg: 8, frontKg: 935.1 },
      { angleDeg: 12, frontKg: 943.1 },
    ],
  },
  modules: {
    pack: {
      subject: '40',
      kg: 462.1,
      uKg: 0.3,
      words: 'pack as lowered, without its 18 body bolts',
      holds: ['40'],
      without: ['40-028'],
    },
    front: {
      subject: 'front module',
      kg: 219.8,
      uKg: 0.3,
      words: '60, 64, the parts of 50 and 63 ahead of X 200, and the drive unit oil',
      holds: ['60', '64', '90-002'],
      aheadOfX: [
        { assembly: '50', xMm: 200 },
        { assembly: '63', xMm: 200 },
      ],
    },
  },
  /** Totes in which parts are weighed; one of them was left on in the faulty record. */
  totes: [
    { label: 'tote S', name: 'small tote, 300 × 200', kg: 0.62 },
    { label: 'tote M', name: 'tote, 400 × 300', kg: 1.35 },
    { label: 'tote L', name: 'large tote, 600 × 400', kg: 2.1 },
  ],

  pack: {
    energyKWh: 56.3,
    envelopeMm: { x: 1520, y: 1250, z: 170 },
    spanXMm: [660, 2180],
    spanZMm: [185, 355],
    cells: {
      count: 112,
      sizeMm: { x: 45, y: 220, z: 133 },
      chargeAh: 157,
      voltageV: 3.2,
      strings: 1,
      rowsAcrossY: 4,
      pitchXMm: 46,
      rowPitchYMm: 230,
      gapAtEachEndMm: 14,
    },
    acrossYMm: { crashBeamASide: 90, sideFrameASide: 66, innerWidth: 938 },
    floor: {
      words: 'friction-stir-welded aluminium planks, two skins on a ribbed core',
      planks: 10,
      seams: 9,
      seamLengthM: 1.46,
      skinMm: 2,
      skins: 2,
      coreMm: 10,
      perimeterWeldM: 5.5,
    },
    lid: {
      words: 'moulded glass-polyester',
      thicknessMm: 2.6,
      screws: { count: 62, spec: 'M6', pitchMm: 89, into: 'rivet nuts, compression limiters' },
      cord: {
        words: 'silicone foam, screws outside it',
        diameterMm: 8,
        squeezedToMm: 5.6,
        lineLoadNPerMm: 1.8,
        lineLoadUNPerMm: 0.4,
      },
      perimeterM: 5.54,
      flangeWidthMm: 28,
      flangeModulusGPa: 10,
      gasketDemandNPerMm: 1,
      gasketDemandUNPerMm: 0.2,
      ventsOpenKPa: 8,
      ventsOpenUKPa: 2,
      freeVolumeL: 110,
      freeVolumeUL: 3,
    },
    crashBeams: {
      words: 'roll-formed steel, screwed in Y to the side frame',
      screwsASide: 10,
      firstXMm: 745,
      pitchXMm: 150,
      headSeatYMm: 537,
      /** Counted from the front, 1 first: M8x80 there (J114), M8x30 elsewhere (J102). */
      longScrewPositions: [3, 6, 8],
      longScrewMm: 80,
      shortScrewMm: 30,
    },
    /** A hollow profile: outer wall, drained cavity, inner wall, then the dry volume. */
    sideFrame: { outerWallYMm: [532, 535], innerWallYMm: [469, 472] },
    toBody: { bolts: 18, spec: 'M12x90 10.9', torqueNm: 95, aSide: 8, rear: 2 },
    locators: [
      { words: 'four-way pin', xMm: 745, yMm: 0, holds: 'X Y', clearanceMm: 0.3 },
      { words: 'two-way slot', xMm: 2095, yMm: 0, holds: 'Y', clearanceMm: 0.35 },
      { words: 'pad', xMm: 800, yMm: -500, holds: 'Z', clearanceMm: 0 },
      { words: 'pad', xMm: 800, yMm: 500, holds: 'Z', clearanceMm: 0 },
      { words: 'pad', xMm: 2050, yMm: 0, holds: 'Z', clearanceMm: 0 },
    ],
    crossings: {
      headerAndPortScrews: 16,
      highVoltageHeaders: 2,
      lowVoltageHeaders: 1,
      coolantPorts: 2,
      vents: 2,
      lidGasketM: 5.54,
      floorSeams: 9,
      floorSeamM: 1.46,
      perimeterWeldM: 5.5,
    },
    /** What must come off before the pack does; the low-voltage plug is in no table. */
    blockers: {
      joints: ['J103', 'J407', 'J604'],
      lowVoltagePlug: { words: 'one lever connector', timeS: 4 },
    },
  },

  chassis: {
    stiffnessHalfWidthPercent: 25,
    cradleBushes: {
      atMm: [
        [-180, -430, 300],
        [-180, 430, 300],
        [360, -330, 270],
        [360, 330, 270],
      ],
      dynamicNPerMm: { x: 900, y: 700, z: 850 },
    },
    driveUnitMounts: {
      atMm: [
        [-80, -300, 420],
        [100, 320, 430],
        [210, 0, 250],
      ],
      dynamicNPerMm: { x: 250, y: 180, z: 260 },
    },
    cradle: {
      words: 'with half its bushes and links',
      kg: 33,
      atMm: [60, 0, 262],
      inertiaKgM2: { x: 2.6, y: 1.3, z: 3.4 },
    },
    driveUnit: { kg: 85, atMm: [34, 18, 347], inertiaKgM2: { x: 2.1, y: 1.9, z: 2.6 } },
    rearCradle: { words: 'hard-mounted', bolts: 4, spec: 'M14x80 10.9', torqueNm: 190 },
    /** Right side, kerb posture; mirror Y for the left. */
    rearFiveLink: {
      uByArmMm: 1,
      uByTapeMm: 3,
      toeBoltEccentricityMm: 4.5,
      pointsMm: {
        'wheel centre': [2920, 780, 325],
        'lower front link outer': [2885, 738, 214],
        'lower front link inner': [2700, 330, 235],
        'spring link outer': [2940, 733, 216],
        'spring link inner': [2965, 300, 232],
        'toe link outer': [3062, 725, 268],
        'toe link inner': [3055, 345, 277],
        'camber link outer': [2945, 700, 455],
        'camber link inner': [2955, 400, 440],
        'trailing link outer': [2895, 705, 462],
        'trailing link inner': [2715, 480, 432],
        'spring lower': [2950, 575, 226],
        'spring upper': [2945, 560, 520],
        'damper lower': [2955, 668, 205],
        'damper upper': [2985, 600, 680],
      },
      onSpringLink: ['spring lower', 'damper lower'],
      coil: { wireMm: 15.5, meanDiameterMm: 112, activeCoils: 5, shearModulusGPa: 79.3 },
      unsprungKgACorner: 47.5,
    },
  },

  package: {
    /** Tape readings between faces, projected on X; the last five are over longer spans. */
    readingsMm: [
      { from: 'cover', to: 'beam front', mm: 50, u: 4 },
      { from: 'beam front', to: 'beam rear', mm: 72, u: 1 },
      { from: 'beam rear', to: 'can end', mm: 178, u: 2 },
      { from: 'can end', to: 'drive unit front', mm: 400, u: 4 },
      { from: 'drive unit front', to: 'drive unit rear', mm: 315, u: 2 },
      { from: 'drive unit rear', to: 'dash lower', mm: 275, u: 5 },
      { from: 'cover', to: 'can end', mm: 300, u: 3 },
      { from: 'can end', to: 'drive unit rear', mm: 715, u: 4 },
      { from: 'cover', to: 'dash lower', mm: 1290, u: 6 },
      { from: 'beam front', to: 'drive unit front', mm: 650, u: 3 },
      { from: 'drive unit front', to: 'dash lower', mm: 590, u: 5 },
    ],
    /** As typed into the faulty record: one figure of one reading is wrong. */
    typingError: { from: 'beam front', to: 'drive unit front', mm: 670 },
    /** The steering rack lies beside the drive unit, not on this ray. */
    bottomedMm: {
      beam: 30,
      can: 39,
      rail: 55,
      'cooling module': 70,
      compressor: 60,
      'drive unit': 315,
    },
    bottomedUMm: 6,
    frontalCase: { speedKmPerH: 56, meanDecelerationG: 17, halfWidthPercent: 5 },
    driver: { h30Mm: 355, l53Mm: 650, heelPointXMm: 520 },
    bulkheadXMm: 1500,
    rearSillXMm: 3600,
  },

  /** Spreads where nothing else is said. */
  defaults: { jointTimeUPercent: 15, thicknessByGaugeUMm: 0.05 },
} as const;
