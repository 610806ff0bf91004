import { GATES, type GateId } from '../../src/data/index.ts';
import type { Entry, GateAnswer, Lapse } from '../../src/study/index.ts';
import { node, text } from './made-study.ts';

/** A record of each gate that lacks nothing, as it would be put down on 25 November 2026. */
export const COMPLETE: Readonly<Record<GateId, Readonly<Record<string, string | number>>>> = {
  'high-voltage': {
    ...{ licensed: 'A. Licensed', second: 'B. Second', packVoltage: 410, gloveClass: '00' },
    ...{ gloveTest: '2026-08-01', makersWait: 600, waited: 660 },
  },
  'absence-of-voltage': {
    ...{ licensed: 'A. Licensed', tester: 'T-1', vehiclePoles: 0.1, vehiclePlus: 0.1 },
    ...{ vehicleMinus: -0.1, packPoles: 0.2, packPlus: 0.1, packMinus: 0.1 },
  },
  'pack-lid': {
    ...{ licensed: 'A. Licensed', second: 'B. Second', partialVoltages: '8 × 44.8 V' },
    ...{ hardwareIn: 12, hardwareOut: 12, quarantine: 'yard, bay 3' },
    ...{ makersLimit: 318, firstTemperature: 295, secondTemperature: 294.5 },
  },
  'warm-cells': { looked: 'A. Licensed', makersLimit: 318, warmest: 295 },
  'hoist-limit': {
    ...{ limitX: 0.273, marginX: 0.4, limitY: 0.168, marginY: 0.5, armRating: 1000 },
    ...{ armLoad: 600, liftRating: 3500, liftLoad: 1640 },
  },
  lowering: { moduleMass: 462, tableRating: 1000 },
  'stored-energy': { what: 'coil springs' },
  pyrotechnics: { makersWait: 600, waited: 700 },
  refrigerant: { certified: 'C. Certified', station: 'S-1', recovered: 0.6 },
  fluids: { mass: 5 },
  dust: {},
  'rotor-magnets': {},
  'enclosure-pressure': { ventsOpen: 8000, relief: 5000 },
};

let made = 0;
const next = (what: string): string => `${what}-${++made}`;
export const AT = '2026-11-25T10:00:00';

export function record(
  step: string,
  gate: GateId,
  over: Record<string, string | number> = {},
): Entry {
  const items = GATES.find((g) => g.id === gate)?.items ?? [];
  const values: Readonly<Record<string, string | number>> = { ...COMPLETE[gate], ...over };
  const answers = items.flatMap(({ id, takes }): GateAnswer[] => {
    const value = values[id] ?? (takes === 'yes' ? 'yes' : '');
    if (value === '') return [];
    return [
      { item: id, asWritten: String(value), ...(typeof value === 'number' ? { x: value } : {}) },
    ];
  });
  return { v: 1, e: 'gate.record', record: { id: next('record'), step, gate, at: AT, answers } };
}
export const mark = (step: string, done = true): Entry => ({
  ...{ v: 1, e: 'step.mark', mark: { id: next('mark'), step, at: AT, done } },
});
export const lapse = (why: Lapse): Entry => ({
  ...{ v: 1, e: 'gate.lapse', lapse: { id: next('lapse'), at: AT, why } },
});
export const override = (
  step: string,
  gate: GateId,
  who = 'A. Lead',
  why = 'on purpose',
): Entry => ({
  ...{ v: 1, e: 'gate.override' },
  override: { id: next('override'), step, gate, at: AT, who, why },
});

const reading = (subject: string, property: string, words: string): Entry => ({
  v: 1,
  e: 'reading.add',
  reading: {
    ...{ id: next('reading'), of: { subject, property, condition: 'kerb' }, value: text(words) },
    ...{ asWritten: words, how: 'supplied', by: 'tester', takenAt: { local: AT } },
    ...{ evidence: [], causes: [] },
  },
});
const takes = (from: string, to: string): Entry => ({
  ...{ v: 1, e: 'link.add', link: { id: next('link'), kind: 'takes', from, to } },
});

/** A van with a pack and its lid, and steps that lower the pack, open it and take the doors off. */
export const STEPS: readonly Entry[] = [
  node('van', null, 'vehicle'),
  node('pack', 'van', 'assembly'),
  node('lid', 'pack'),
  node('doors', 'van'),
  reading('pack', 'packEnergy', 'as a word: that there is one is enough'),
  node('lower', 'van', 'removal'),
  takes('lower', 'pack'),
  node('open', 'van', 'removal'),
  takes('open', 'lid'),
  node('off', 'van', 'removal'),
  takes('off', 'doors'),
  reading('off', 'gates', 'dust'),
];

export const LOWER: readonly GateId[] = [
  'high-voltage',
  'absence-of-voltage',
  'hoist-limit',
  'lowering',
];
export const OPEN: readonly GateId[] = ['pack-lid', 'warm-cells'];
export const records = (step: string, gates: readonly GateId[]): Entry[] =>
  gates.map((gate) => record(step, gate));
