/**
 * Gates: what has to be on record before a step that can hurt is shown as done. The words defer
 * to the instructions of the vehicle's and the lift's makers, to local rules and to licensed
 * practice; a record is complete or not complete, and says nothing more than that.
 */
export const GATE_IDS = [
  'high-voltage',
  'absence-of-voltage',
  'pack-lid',
  'warm-cells',
  'hoist-limit',
  'lowering',
  'stored-energy',
  'pyrotechnics',
  'refrigerant',
  'fluids',
  'dust',
  'rotor-magnets',
  'enclosure-pressure',
] as const;
export type GateId = (typeof GATE_IDS)[number];

/** What makes records lapse that were taken before. */
export const LAPSES = ['break', 'shift change', 'pack moved'] as const;
export type Lapse = (typeof LAPSES)[number];

/** Signs after ISO 7010, drawn by us, each with its words. */
export type SignId = 'W001' | 'W006' | 'W012' | 'W015' | 'W021' | 'W029' | 'M004' | 'M009' | 'M021';

/** One line of a gate's record. Numbers are in SI. */
export interface GateItem {
  readonly id: string;
  readonly words: string;
  readonly takes:
    | 'yes'
    | 'person'
    | 'words'
    | 'date'
    | 'glove class'
    | 'voltage'
    | 'temperature'
    | 'minutes'
    | 'count'
    | 'mass'
    | 'length'
    | 'pressure';
  /** Other items of the record that it is held against. */
  readonly otherThan?: string;
  readonly sameAs?: string;
  readonly atMostThat?: string;
  readonly atLeastThat?: string;
  /** A glove class whose voltage is at least that of this item. */
  readonly covers?: string;
  /** Must stay below this, SI. */
  readonly below?: number;
  /** A date not further back than so many months, and not ahead. */
  readonly withinMonths?: number;
  readonly source: string;
}

export interface Gate {
  readonly id: GateId;
  readonly title: string;
  readonly words: string;
  readonly signs: readonly SignId[];
  /** A named override with its reason may stand in for the record; else stop is the only other state. */
  readonly override: boolean;
  readonly lapses: readonly Lapse[];
  readonly items: readonly GateItem[];
}

const PRACTICE = 'common practice, no source';
const FIVE_RULES = 'EN 50110 / DIN VDE 0105, five rules, in our own words';
const GLOVES = 'IEC 60903 / ASTM D120';
const ALIS = 'ANSI/ALI ALIS:2022, in our own words';

/** Direct voltage below which a conductor counts as absent of voltage: 60 V DC (UN R100; 30 V AC rms). */
export const TOUCH_VOLTAGE_DC = 60;

/** Maximum use voltage of insulating gloves by class, V AC (IEC 60903 / ASTM D120): also held against direct voltages. */
export const GLOVE_CLASSES: Readonly<Record<string, number>> = {
  '00': 500,
  '0': 1000,
  '1': 7500,
  '2': 17000,
  '3': 26500,
  '4': 36000,
};

/** Electrical test of gloves in service: every six months (IEC 60903 / ASTM D120); local rules differ. */
export const GLOVE_TEST_MONTHS = 6;

type More = Partial<Omit<GateItem, 'id' | 'words' | 'takes' | 'source'>>;
const item = (
  id: string,
  takes: GateItem['takes'],
  words: string,
  source = PRACTICE,
  more: More = {},
): GateItem => ({ id, takes, words, source, ...more });
const yes = (id: string, words: string, source = PRACTICE) => item(id, 'yes', words, source);

const absence = (id: string, words: string): GateItem =>
  item(id, 'voltage', words, 'UN R100: 60 V DC; EN 50110: on all poles', {
    below: TOUCH_VOLTAGE_DC,
  });

const ALL_LAPSES: readonly Lapse[] = LAPSES;

export const GATES: readonly Gate[] = [
  {
    id: 'high-voltage',
    title: 'High voltage, people and gear',
    words:
      'Work on the high-voltage side of the vehicle is for licensed people under local rules and the vehicle maker’s instructions. The record lapses at breaks, at a change of shift and when the pack moves.',
    signs: ['W012', 'M009', 'M021'],
    override: false,
    lapses: ALL_LAPSES,
    items: [
      item('licensed', 'person', 'licensed person who does the work', FIVE_RULES),
      item(
        'second',
        'person',
        'second person, trained in rescue, outside the work zone',
        PRACTICE,
        {
          otherThan: 'licensed',
        },
      ),
      item(
        'packVoltage',
        'voltage',
        'highest voltage of the pack, by its plate or maker',
        PRACTICE,
      ),
      item('gloveClass', 'glove class', 'class of the insulating gloves', GLOVES, {
        covers: 'packVoltage',
      }),
      item('gloveTest', 'date', 'last electrical test of the gloves', GLOVES, {
        withinMonths: GLOVE_TEST_MONTHS,
      }),
      yes('airTest', 'gloves looked at and air-tested before use', GLOVES),
      yes('overGloves', 'leather over-gloves on', GLOVES),
      yes('locked', 'disconnect opened, locked and tagged by the licensed person', FIVE_RULES),
      yes('wheels', 'wheels cannot turn: a turned magnet machine makes voltage', PRACTICE),
      item('makersWait', 'minutes', 'waiting time by the vehicle’s maker', PRACTICE),
      item('waited', 'minutes', 'waited since the disconnect was opened', PRACTICE, {
        atLeastThat: 'makersWait',
      }),
    ],
  },
  {
    id: 'absence-of-voltage',
    title: 'Absence of voltage',
    words:
      'Measured by the licensed person on all poles and to chassis, at both connector ends, with a tester proven before and after. A pack is never dead: its inside stays at its full voltage.',
    signs: ['W012'],
    override: false,
    lapses: ALL_LAPSES,
    items: [
      item('licensed', 'person', 'licensed person who measures', FIVE_RULES),
      item('tester', 'words', 'tester, by its number', FIVE_RULES),
      yes('provenBefore', 'tester proven on a known source before', FIVE_RULES),
      absence('vehiclePoles', 'vehicle end: plus to minus'),
      absence('vehiclePlus', 'vehicle end: plus to chassis'),
      absence('vehicleMinus', 'vehicle end: minus to chassis'),
      absence('packPoles', 'pack end: plus to minus'),
      absence('packPlus', 'pack end: plus to chassis'),
      absence('packMinus', 'pack end: minus to chassis'),
      yes('provenAfter', 'tester proven on a known source after', FIVE_RULES),
    ],
  },
  {
    id: 'pack-lid',
    title: 'Opening the pack',
    words:
      'A pack is never dead. Opening its lid is for a licensed person with insulated tools, under local rules and the pack maker’s instructions.',
    signs: ['W012', 'W021', 'M009', 'M004'],
    override: false,
    lapses: ALL_LAPSES,
    items: [
      item('licensed', 'person', 'licensed person who opens it', PRACTICE),
      item('second', 'person', 'second person, outside the work zone', PRACTICE, {
        otherThan: 'licensed',
      }),
      item('partialVoltages', 'words', 'partial voltages, as measured', PRACTICE),
      yes('insulatedTools', 'insulated tools only', PRACTICE),
      yes('metalOff', 'watches, rings, chains and tags off', PRACTICE),
      item('hardwareIn', 'count', 'loose hardware and tools counted in', PRACTICE),
      item('hardwareOut', 'count', 'loose hardware and tools counted out', PRACTICE, {
        sameAs: 'hardwareIn',
      }),
      yes('gasAndFire', 'plan for gas and fire read by everybody here', PRACTICE),
      item('quarantine', 'words', 'quarantine place for the pack', PRACTICE),
      item('makersLimit', 'temperature', 'highest cell temperature allowed by the maker', PRACTICE),
      item('firstTemperature', 'temperature', 'first temperature reading', PRACTICE, {
        atMostThat: 'makersLimit',
      }),
      item(
        'secondTemperature',
        'temperature',
        'second temperature reading, later, no higher',
        PRACTICE,
        {
          atMostThat: 'firstTemperature',
        },
      ),
    ],
  },
  {
    id: 'warm-cells',
    title: 'Warm or damaged cells',
    words:
      'Cells that are warm, swollen, wet, smelling or damaged: stop, keep away, follow the fire plan and the pack maker’s instructions. There is no override.',
    signs: ['W021', 'W012'],
    override: false,
    lapses: ALL_LAPSES,
    items: [
      item('looked', 'person', 'licensed person who looked at the cells', PRACTICE),
      yes('noDamage', 'no damage, swelling, wetness or smell found', PRACTICE),
      item('makersLimit', 'temperature', 'highest cell temperature allowed by the maker', PRACTICE),
      item('warmest', 'temperature', 'warmest cell', PRACTICE, { atMostThat: 'makersLimit' }),
    ],
  },
  {
    id: 'hoist-limit',
    title: 'Balance on the hoist',
    words:
      'The predicted margins after the step against the limits recorded. The instructions of the lift and of the vehicle come first; watch the vehicle, not the number.',
    signs: ['W015'],
    override: false,
    lapses: [],
    items: [
      item('limitX', 'length', 'margin asked for in X', 'default of this project, no standard'),
      item('marginX', 'length', 'predicted margin in X less 2 u, with the pull', PRACTICE, {
        atLeastThat: 'limitX',
      }),
      item('limitY', 'length', 'margin asked for in Y', 'default of this project, no standard'),
      item('marginY', 'length', 'predicted margin in Y less 2 u, with the pull', PRACTICE, {
        atLeastThat: 'limitY',
      }),
      item('armRating', 'mass', 'rating of one arm', ALIS),
      item('armLoad', 'mass', 'predicted load on one arm plus 2 u, with the pull', ALIS, {
        atMostThat: 'armRating',
      }),
      item('liftRating', 'mass', 'rating of the lift', ALIS),
      item('liftLoad', 'mass', 'predicted load on the lift plus 2 u, with the pull', ALIS, {
        atMostThat: 'liftRating',
      }),
    ],
  },
  {
    id: 'lowering',
    title: 'Lowering a module',
    words:
      'Follow the instructions of the lift, of the table and of the vehicle. Mechanical locks set before anybody works below; high-reach stands where the balance shifts.',
    signs: ['W015', 'M004'],
    override: true,
    lapses: [],
    items: [
      item('moduleMass', 'mass', 'mass of the module, at most', PRACTICE),
      item('tableRating', 'mass', 'rating of the table', PRACTICE, { atLeastThat: 'moduleMass' }),
      yes('locks', 'mechanical locks of the lift set', ALIS),
      yes('stands', 'high-reach stands set', ALIS),
      yes('lastBolts', 'last bolts out only with the table under load', PRACTICE),
      yes('nobodyBelow', 'nobody below; trays and stands clear before lowering', ALIS),
    ],
  },
  {
    id: 'stored-energy',
    title: 'Springs, gas struts, pressure',
    words: 'Release stored energy with the maker’s tool and by the maker’s instructions.',
    signs: ['M004'],
    override: true,
    lapses: [],
    items: [
      item('what', 'words', 'what holds energy', PRACTICE),
      yes('tool', 'compressor or release tool of the maker in use', PRACTICE),
      yes('clear', 'nobody in the way of what could fly', PRACTICE),
    ],
  },
  {
    id: 'pyrotechnics',
    title: 'Airbags and belt tensioners',
    words:
      'Wait as the vehicle’s maker says after the 12 V battery is off; there is no usual time. No test light; airbags face up; keep clear.',
    signs: ['W029'],
    override: true,
    lapses: [],
    items: [
      yes('batteryOff', '12 V battery disconnected', PRACTICE),
      item(
        'makersWait',
        'minutes',
        'waiting time by the vehicle’s maker',
        'the maker’s instructions: sources differ, no default',
      ),
      item('waited', 'minutes', 'waited since', PRACTICE, { atLeastThat: 'makersWait' }),
      yes('faceUp', 'airbags kept face up, nothing on them', PRACTICE),
    ],
  },
  {
    id: 'refrigerant',
    title: 'Refrigerant',
    words: 'Recovered by a certified person with a certified station; local law comes first.',
    signs: ['M004', 'M009'],
    override: true,
    lapses: [],
    items: [
      item('certified', 'person', 'certified person', PRACTICE),
      item('station', 'words', 'recovery station', PRACTICE),
      item('recovered', 'mass', 'mass recovered', PRACTICE),
    ],
  },
  {
    id: 'fluids',
    title: 'Coolant and oil',
    words: 'Cold before opening; caught, measured and kept apart; disposed of by local rules.',
    signs: ['M009'],
    override: true,
    lapses: [],
    items: [
      yes('cold', 'cold to the touch', PRACTICE),
      yes('caught', 'trays below, kinds kept apart', PRACTICE),
      item('mass', 'mass', 'mass caught', PRACTICE),
    ],
  },
  {
    id: 'dust',
    title: 'Dusts',
    words: 'Brake, fibre and battery dusts: extraction and mask by local rules.',
    signs: ['M004'],
    override: true,
    lapses: [],
    items: [yes('extraction', 'extraction on', PRACTICE), yes('mask', 'mask on', PRACTICE)],
  },
  {
    id: 'rotor-magnets',
    title: 'Rotor magnets',
    words:
      'Rotors with magnets pull tools and fingers and upset implants; follow the maker’s pulling gear.',
    signs: ['W006'],
    override: true,
    lapses: [],
    items: [
      yes('implants', 'nobody with an implant near', PRACTICE),
      yes('gear', 'pulling gear of the maker in use', PRACTICE),
    ],
  },
  {
    id: 'enclosure-pressure',
    title: 'Enclosure under pressure',
    words: 'A leak test puts force on covers: never above what vents and maker allow.',
    signs: ['M004'],
    override: true,
    lapses: [],
    items: [
      item('ventsOpen', 'pressure', 'pressure at which vents open, or the maker’s limit', PRACTICE),
      item('relief', 'pressure', 'relief valve of the rig set at', PRACTICE, {
        atMostThat: 'ventsOpen',
      }),
      yes('clear', 'nobody before a cover under pressure', PRACTICE),
    ],
  },
];

export const gateOf = (id: string): Gate | undefined => GATES.find((g) => g.id === id);

/** The words of the signs (ISO 7010, from memory). */
export const SIGN_WORDS: Readonly<Record<SignId, string>> = {
  W001: 'general warning',
  W006: 'magnetic field',
  W012: 'electricity',
  W015: 'overhead load',
  W021: 'flammable material',
  W029: 'pressurized cylinder',
  M004: 'wear eye protection',
  M009: 'wear protective gloves',
  M021: 'disconnect before carrying out maintenance or repair',
};
