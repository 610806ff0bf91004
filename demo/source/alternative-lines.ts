import { ALTERNATIVES } from './alternatives.ts';

/**
 * What each alternative design is made of and needs beside it (invented). Masses in kg, times in
 * s, prices in u, lengths in m; a number alone is exact, a pair is the number and its rectangular
 * half-width.
 */
export type WrittenNumber = number | readonly [x: number, half: number];
export interface WrittenLine {
  readonly name: string;
  /** Properties by the part of their id behind `cost.`. */
  readonly words?: Readonly<Record<string, string>>;
  readonly numbers: Readonly<Record<string, WrittenNumber>>;
}
export interface WrittenDesign {
  readonly name: string;
  readonly lines: readonly WrittenLine[];
  /** What may go wrong with it and when it could come. */
  readonly words?: Readonly<Record<'risk' | 'timing', string>>;
}
export interface WrittenFunction {
  readonly label: string;
  readonly name: string;
  readonly serves: string;
  readonly designs: readonly WrittenDesign[];
}

const { packFloor, lidJoint } = ALTERNATIVES;
const percent = (x: number, of: number = lidJoint.halfWidthPercent): WrittenNumber => [
  x,
  (x * of) / 100,
];
const middle = ([low, high]: readonly [number, number]): WrittenNumber => [
  (low + high) / 2,
  (high - low) / 2,
];

/** Time to undo one in service, and to part the lid from its cord. */
const SERVICE = { screw: 3.5, clip: 2.0, parting: 60 };

const piece = (
  name: string,
  count: number,
  { priceU, timeS }: { readonly priceU: number; readonly timeS: number },
  serviceS?: number,
): WrittenLine => ({
  name,
  numbers: {
    ...{ pieces: count, price: percent(priceU), time: percent(timeS) },
    ...(serviceS === undefined ? {} : { service: percent(serviceS) }),
  },
});

/** The same cord in its groove, and the lid parted from it, for every design. */
const CORD: WrittenLine = {
  name: 'foam cord in its groove, lid parted from it in service',
  words: { in: 'every design', material: 'silicone foam cord', machine: 'router' },
  numbers: {
    ...{ mass: percent(0.098), time: percent(45), machineTime: percent(40) },
    ...{ crossings: 1, service: percent(SERVICE.parting) },
  },
};

const LID: WrittenFunction = {
  label: 'LID',
  name: 'fastening of the pack lid',
  serves: 'hold the lid on its cord',
  designs: lidJoint.designs.map((design, i) => ({
    name: design.words,
    lines: [
      piece(
        design.words.includes('clips') ? 'spring clips' : 'screws M6',
        design.count,
        design.fastener,
        design.words.includes('clips') ? SERVICE.clip : SERVICE.screw,
      ),
      ...('rivetNut' in design ? [piece('rivet nuts', design.count, design.rivetNut)] : []),
      ...('machiningEachS' in design
        ? [
            {
              name: 'tapped holes',
              words: { machine: 'router' },
              numbers: { pieces: design.count, machineTime: percent(design.machiningEachS) },
            },
          ]
        : []),
      ...(i === 0 ? [CORD] : []),
    ],
  })),
};

const AREA = packFloor.sizeM.x * packFloor.sizeM.y;

/** What a thin floor needs beneath it. */
const SHIELD: WrittenLine = {
  name: 'stone shield',
  numbers: {
    pieces: 1,
    price: middle(packFloor.stoneShield.priceU),
    mass: middle(packFloor.stoneShield.kg),
  },
};

/** A plate pressed from sheet, on the press of the rate book. */
const stamped = (
  material: string,
  thicknessMm: number,
  modulusGPa: number,
  density: number,
  poisson: number,
): WrittenLine => ({
  name: 'stamped plate',
  words: { material, machine: 'press 2500 t' },
  numbers: {
    ...{
      pieces: 1,
      face: AREA,
      gross: [1.15, 0.06],
      thickness: percent(thicknessMm, 3),
      modulus: percent(modulusGPa, 3),
    },
    ...{
      density: percent(density, 1),
      poisson,
      time: percent(20, 30),
      machineTime: percent(12, 30),
    },
    ...{ tool: percent(1_300_000, 30), toolLife: 1_000_000 },
  },
});

const [built, aluminium, steel, moulded] = packFloor.designs;

const FLOOR: WrittenFunction = {
  label: 'FLOOR',
  name: 'floor of the pack',
  serves: 'close the pack from below and carry its cells',
  designs: [
    {
      name: built.words,
      lines: [
        {
          name: 'ten planks',
          words: { material: built.material, process: 'extrusion', conversion: 'extrusion' },
          numbers: {
            ...{ mass: [built.kg, 0.018], tool: percent(25_000, 30), toolLife: 300_000 },
            ...{ thickness: percent(4, 3), core: 10, modulus: percent(70, 3), poisson: 0.33 },
          },
        },
        {
          name: 'friction stir seams of 1.46 m',
          words: { machine: 'friction-stir cell' },
          numbers: {
            pieces: 9,
            machineTime: percent(100, 25),
            time: percent(50, 30),
            crossings: 1,
          },
        },
      ],
    },
    {
      name: aluminium.words,
      lines: [stamped(aluminium.material, aluminium.thicknessMm, 70, 2700, 0.33), SHIELD],
    },
    {
      words: {
        risk: 'corrodes where a stone gets through the coating',
        timing: 'a year, for its tools',
      },
      name: steel.words,
      lines: [stamped(steel.material, steel.thicknessMm, 210, 7850, 0.3), SHIELD],
    },
    {
      name: moulded.words,
      lines: [
        {
          name: 'moulded plate',
          words: { material: moulded.material, machine: 'press 2500 t' },
          numbers: {
            ...{
              pieces: 1,
              face: AREA,
              gross: [1.04, 0.02],
              thickness: percent(moulded.thicknessMm, 3),
            },
            // From E 20 and G 7.5 GPa: E / (2 G) − 1.
            ...{
              modulus: percent(moulded.modulusGPa, 10),
              poisson: moulded.modulusGPa / (2 * moulded.shearModulusGPa) - 1,
            },
            ...{
              density: percent(moulded.densityKgPerM3, 2),
              machineTime: percent(200, 25),
              time: percent(100, 30),
            },
            ...{ tool: percent(380_000, 30), toolLife: 300_000 },
          },
        },
        {
          name: 'edge trimmed and sealed, a metre',
          words: { machine: 'router' },
          numbers: {
            pieces: moulded.trimmedM,
            price: percent(0.45, 30),
            machineTime: percent(20, 25),
          },
        },
      ],
    },
  ],
};

export const FUNCTIONS: readonly WrittenFunction[] = [LID, FLOOR];

/** What each assembly is for, by shares of its cost (invented); the rest is not allocated. */
export const ASSEMBLY_FUNCTIONS: Readonly<Record<string, string>> = {
  '10': 'carry loads 55 %; absorb a crash 30 %; keep weather out 10 %',
  '11': 'give access 60 %; keep weather out 25 %; absorb a crash 10 %',
  '12': 'see out 70 %; keep weather out 30 %',
  '20': 'keep weather out 40 %; look 60 %',
  '30': 'hold people and cargo 80 %; look 10 %',
  '40': 'store energy 45 %; absorb a crash 20 %; seal the dry volume 15 %; carry loads 15 %',
  '50': 'drive 100 %',
  '60': 'guide the wheels 70 %; carry loads 30 %',
  '61': 'guide the wheels 75 %; carry loads 25 %',
  '62': 'guide the wheels 100 %',
  '63': 'stop 100 %',
  '64': 'steer 100 %',
  '70': 'keep temperatures 100 %',
  '80': 'control and light 90 %',
  '95': 'carry loads 50 %; seal the dry volume 20 %; keep weather out 20 %',
};
