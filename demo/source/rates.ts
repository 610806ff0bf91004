import type { Kind, Way } from '../../src/quantity/index.ts';

/**
 * The prices and rates of VAN-27's rate book (invented), as people write them: per kg, per hour,
 * per square metre, in the unit of account u. `low / mode / high` is a triangle.
 */
export interface WrittenRate {
  readonly id: string;
  readonly words: string;
  readonly kind: Kind;
  readonly low: number;
  readonly mode: number;
  readonly high: number;
  readonly how: Way;
  /** Lower-case words in a part's material or process; the longest match wins. */
  readonly match: readonly string[];
}

type Triangle = readonly [low: number, mode: number, high: number];

const rate = (kind: Kind, how: Way, id: string, words: string, t: Triangle, match: string[]) =>
  ({ id, words, kind, low: t[0], mode: t[1], high: t[2], how, match }) satisfies WrittenRate;

const hourly = (how: Way, id: string, words: string, t: Triangle) =>
  rate('moneyPerTime', how, `rate/${id}`, words, t, [id]);
const material = (id: string, t: Triangle, ...match: string[]) =>
  rate('moneyPerMass', 'guessed', `material/${id}`, `${id}, price per kg bought`, t, match);
const quoted = (id: string, t: Triangle, ...match: string[]) =>
  rate('moneyPerMass', 'supplied', `material/${id}`, `${id}, price per kg bought`, t, match);
const process = (id: string, t: Triangle, ...match: string[]) =>
  rate('moneyPerMass', 'guessed', `process/${id}`, `${id}, conversion per kg of part`, t, match);
const yields = (id: string, t: Triangle, ...match: string[]) =>
  rate('ratio', 'guessed', `factor/yield ${id}`, `${id}, mass bought to mass of part`, t, match);

const scrap = (id: string, t: Triangle, ...match: string[]) =>
  rate('moneyPerMass', 'guessed', `scrap/${id}`, `${id} scrap, price per kg sold`, t, match);

const tool = (id: string, t: Triangle, life: number, ...match: string[]) => [
  rate('money', 'guessed', `tool/${id}`, `${id}, set of tools of a part`, t, match),
  rate(
    'count',
    'guessed',
    `life/${id}`,
    `${id}, pieces of a set of tools`,
    [0.7 * life, life, 1.5 * life],
    match,
  ),
];

/** Ids of the cells that version R2 changes, by what. */
export const ALUMINIUM = [
  'material/aluminium sheet',
  'material/aluminium extrusion',
  'material/aluminium casting alloy',
] as const;

export const RATES: readonly WrittenRate[] = [
  hourly('supplied', 'labour', 'labour', [30, 36, 44]),
  hourly('supplied', 'press 2500 t', '2,500 t press', [170, 205, 250]),
  hourly('supplied', 'router', 'five-axis router', [75, 95, 120]),
  hourly('supplied', 'friction-stir cell', 'friction-stir welding cell', [60, 75, 95]),
  hourly('guessed', 'roll forming line', 'roll forming line', [60, 80, 110]),
  hourly('guessed', 'extrusion press', 'extrusion press of 22 MN', [220, 280, 360]),
  hourly('guessed', 'die casting 1200 t', 'die casting cell of 1,200 t', [90, 120, 160]),
  hourly('guessed', 'low-pressure caster', 'low-pressure casting machine', [55, 75, 100]),
  hourly('guessed', 'injection 800 t', 'injection moulding machine of 800 t', [45, 60, 80]),
  hourly('guessed', 'tube bender', 'tube bender', [35, 48, 65]),
  hourly('guessed', 'spot welding robot', 'spot welding robot', [18, 25, 34]),
  hourly('guessed', 'arc welding robot', 'arc welding cell', [25, 34, 46]),
  hourly('guessed', 'dispensing robot', 'dispensing cell', [20, 28, 38]),
  hourly('guessed', 'screwdriver', 'screwdriver with its controller', [1, 1.5, 2.5]),
  hourly('guessed', 'rivet nut setter', 'rivet nut setter', [1.5, 2.5, 4]),
  scrap('steel', [0.15, 0.22, 0.3], 'steel'),
  scrap('aluminium', [1.4, 1.8, 2.2], 'al 6', 'al 3', 'al hpdc', 'al alsi', 'aluminium'),
  rate(
    'moneyPerArea',
    'supplied',
    'rate/coating',
    'coating, both sides',
    [1.8, 2.4, 3.2],
    ['coating'],
  ),
  rate(
    'ratio',
    'supplied',
    'factor/overhead',
    'overhead and profit',
    [1.14, 1.18, 1.24],
    ['overhead'],
  ),

  quoted('aluminium sheet', [3.6, 4.3, 5.2], 'al 6016', 'al 3003', 'aluminium sheet'),
  quoted(
    'aluminium extrusion',
    [4.0, 4.7, 5.6],
    'al 6005a',
    'al 6060',
    'al 6063',
    'al 6082',
    'aluminium extrusion',
  ),
  quoted(
    'steel sheet',
    [0.95, 1.15, 1.45],
    'deep-draw steel',
    'deep-draw bake-hardening steel',
    'galvanised deep-draw steel',
    'high-strength low-alloy',
    'steel 380',
    'steel/epdm',
    'steel sheet',
  ),
  quoted(
    'glass-fibre moulding charge',
    [4.2, 5.2, 6.8],
    'smc glass',
    'glass-fibre moulding charge',
  ),

  material('dual-phase steel sheet', [1.05, 1.3, 1.65], 'dual-phase steel'),
  material('martensitic steel strip', [1.15, 1.4, 1.8], 'martensitic steel'),
  material('press-hardening steel sheet', [1.15, 1.4, 1.75], 'press-hardened steel'),
  material('laminated steel sheet', [2.1, 2.7, 3.6], 'deep-draw steel, laminated'),
  material('steel tube', [1.25, 1.55, 2.0], 'steel tube'),
  material('steel bar', [0.9, 1.15, 1.5], 'steel', 'steel 8.8', 'steel 10.9', 'steel solid'),
  material('case-hardening steel', [1.25, 1.6, 2.1], 'case-hardened steel'),
  material('spring steel wire', [1.4, 1.8, 2.3], 'spring steel'),
  material('grey iron', [0.8, 1.05, 1.4], 'grey iron'),
  material('ductile iron', [0.95, 1.25, 1.65], 'ductile iron'),
  // Aluminium by grade only: a bare "Al" or "Al HPDC" is also in the words for things that are
  // mostly something else, such as a power stage in its housing.
  material('aluminium casting alloy', [2.4, 2.9, 3.6], 'al hpdc (si10mnmg)', 'al alsi7mg'),
  material('aluminium bracket with rubber bush', [3.2, 4.3, 5.9], 'al bracket, nr bush', 'nr/al'),
  material('busbar aluminium and copper', [5.2, 6.6, 8.4], 'al 1060 / cu'),
  material('copper strip with moulded cover', [6.8, 8.6, 11.0], 'cu/pbt'),
  material('coated brake tube', [3.4, 4.5, 6.0], 'cu-ni / pa coated steel'),
  material('polypropylene compound', [1.35, 1.7, 2.2], 'pp', 'pp talc', 'pp/epdm', 'pp/abs'),
  material('long-glass polypropylene', [1.9, 2.4, 3.1], 'pp long-glass'),
  material('glass-mat polypropylene', [2.2, 2.8, 3.6], 'gmt pp glass'),
  material('polypropylene honeycomb', [2.5, 3.2, 4.2], 'pp honeycomb'),
  material('polyethylene', [1.2, 1.5, 2.0], 'hdpe'),
  material('polyamide', [2.6, 3.3, 4.3], 'pa66'),
  material('polyester felt', [1.7, 2.2, 2.9], 'pet felt', 'pet needle felt', 'pet/eva'),
  material('rubber compound', [1.8, 2.3, 3.0], 'epdm'),
  material('polyurethane foam', [4.8, 6.4, 8.8], 'pu foam'),
  material('silicone foam cord', [9.0, 12.0, 16.0], 'silicone foam cord'),
  material('filled silicone', [6.5, 9.0, 12.5], 'filled silicone'),
  material('two-part polyurethane sealer', [4.0, 5.2, 7.0], '2k pu'),
  material('body sealer and damping', [2.2, 3.0, 4.1], 'pvc/epoxy/butyl'),
  material('cavity wax', [2.5, 3.4, 4.6], 'wax'),
  material('paint and primer', [4.0, 5.5, 7.5], 'coating'),
  material('mica sheet', [8.0, 11.0, 15.0], 'mica'),
  material('laminated glass', [2.4, 3.2, 4.2], 'laminated glass'),
  material('tempered glass', [1.4, 1.9, 2.5], 'tempered glass'),
  material('plywood', [1.2, 1.6, 2.2], 'birch ply'),

  process('stamping', [0.5, 0.8, 1.25], 'stamp', 'stamp, ribbed'),
  process(
    'stamping and welding',
    [1.0, 1.5, 2.2],
    'stamp + ',
    'stamp, mig',
    'stamp, two-shell mig',
  ),
  process('stamping and hemming', [1.1, 1.6, 2.3], 'stamp, hem'),
  process('stamping and laser welding', [2.2, 3.2, 4.6], 'stamp, laser weld'),
  process('hot stamping', [1.4, 1.9, 2.6], 'hot stamp'),
  process('roll forming', [0.35, 0.55, 0.85], 'roll form'),
  process('wheel making', [0.9, 1.3, 1.9], 'roll, spin, mig'),
  process('extruding and cutting', [0.7, 1.1, 1.6], 'extrusion'),
  process('extruding and stretch bending', [1.2, 1.7, 2.5], 'extrusion, stretch bent'),
  process('extruding and machining', [2.1, 3.0, 4.4], 'extrusion, cnc'),
  process('extruding and stir welding', [2.3, 3.3, 4.7], 'extrusion + friction stir'),
  process('cord extruding and joining', [2.6, 3.8, 5.5], 'extruded, joined'),
  process('brazing of stamped plates', [2.2, 3.1, 4.4], 'brazed stamped plate'),
  process('pressure die casting', [1.8, 2.6, 3.7], 'die casting'),
  process('gravity die casting', [2.2, 3.1, 4.4], 'gravity die casting'),
  process('counter-pressure casting', [2.4, 3.4, 4.8], 'counter-pressure casting'),
  process('sand casting', [0.9, 1.3, 1.9], 'sand casting'),
  process('sand casting and machining', [1.3, 1.9, 2.7], 'sand casting, machining'),
  process('casting and bonding of rubber', [2.8, 4.0, 5.8], 'cast + vulcanise', 'vulcanised'),
  process('injection moulding', [1.2, 1.8, 2.7], 'injection moulding'),
  process('blow moulding', [1.3, 1.9, 2.8], 'blow moulding'),
  process('compression moulding', [1.2, 1.7, 2.5], 'compression moulding'),
  process('thermoforming', [1.0, 1.5, 2.3], 'thermoform'),
  process('bending', [0.8, 1.3, 2.1], 'bend'),
  process('bending and laminating', [1.4, 2.0, 2.9], 'bend, laminate'),
  process(
    'tube bending and welding',
    [2.0, 2.9, 4.2],
    'tube bend + mig',
    'bend, mig',
    'tube + mig',
  ),
  process('arc welding', [1.5, 2.2, 3.2], 'mig'),
  process('forging', [1.1, 1.6, 2.4], 'forge', 'forging', 'forging, stamp'),
  process('gear making', [4.5, 6.5, 9.2], 'forge, hob, grind'),
  process('cold forming', [0.8, 1.2, 1.8], 'cold form'),
  process('cold coiling', [0.7, 1.1, 1.6], 'cold coil'),
  process('turning', [2.4, 3.5, 5.1], 'turning'),
  process('die cutting', [1.8, 2.6, 3.8], 'die cut'),
  process('dispensing', [1.6, 2.4, 3.6], 'dispense', 'robot bead', 'applied'),
  process('spraying', [2.6, 3.9, 5.8], 'spray', 'dip + spray'),
  process('routing', [0.8, 1.2, 1.8], 'routing'),

  yields('stamping', [1.35, 1.55, 1.8], 'stamp', 'hot stamp', 'roll, spin, mig'),
  yields('roll forming', [1.03, 1.06, 1.1], 'roll form'),
  yields('extruding', [1.08, 1.14, 1.22], 'extrusion', 'extruded'),
  yields('plate brazing', [1.25, 1.4, 1.6], 'brazed stamped plate'),
  yields('casting', [1.04, 1.08, 1.14], 'casting', 'cast + vulcanise', 'vulcanised'),
  yields('casting and machining', [1.12, 1.2, 1.32], 'sand casting, machining'),
  yields('moulding', [1.02, 1.04, 1.08], 'moulding'),
  yields('thermoforming', [1.15, 1.28, 1.45], 'thermoform', 'die cut', 'routing'),
  yields('bending', [1.02, 1.05, 1.1], 'bend', 'tube + mig', 'mig'),
  yields('glass cutting', [1.1, 1.18, 1.3], 'bend, laminate'),
  yields('forging', [1.12, 1.22, 1.38], 'forge', 'forging'),
  yields('cold forming', [1.03, 1.06, 1.1], 'cold form', 'cold coil'),
  yields('turning', [1.3, 1.5, 1.8], 'turning'),
  yields('dispensing', [1.02, 1.05, 1.1], 'dispense', 'robot bead', 'applied'),
  yields('spraying', [1.25, 1.5, 1.9], 'spray'),

  ...tool('stamping', [120_000, 220_000, 380_000], 1_000_000, 'stamp', 'hot stamp'),
  ...tool('roll forming', [80_000, 120_000, 180_000], 1_500_000, 'roll form'),
  ...tool('extruding', [3_000, 6_000, 12_000], 60_000, 'extrusion', 'extruded'),
  ...tool('casting', [90_000, 160_000, 280_000], 120_000, 'casting'),
  ...tool('moulding', [60_000, 120_000, 220_000], 700_000, 'moulding', 'thermoform'),
  ...tool('forging', [25_000, 45_000, 80_000], 60_000, 'forge', 'forging', 'cold form'),
  ...tool('bending', [4_000, 8_000, 15_000], 500_000, 'bend'),
];
