import { describe, expect, it } from 'vitest';
import {
  type AtHand,
  askStudy,
  loadAll,
  type MeasureNextOptions,
  measureNext,
  type NextReading,
} from '../../src/engine/index.ts';
import type { Value } from '../../src/quantity/index.ts';
import type { Entry, StudyView } from '../../src/study/index.ts';
import { later, mass, node, point, read, scalar, studyOf } from '../study/made-study.ts';
import { out } from './made-question.ts';

const questions = await loadAll();

const scale = (u: number, more: Partial<AtHand> = {}): AtHand => ({
  ...{ label: 'scale', kind: 'mass', betters: 'reading', u, relativeU: 0, minutes: 4 },
  range: [0, 1000],
  ...more,
});
const MASS: MeasureNextOptions['asks'] = [
  { question: 'mass-roll-up', output: 'mass', width: { u: 0.01 } },
];
const next = (view: StudyView, more: MeasureNextOptions = {}) =>
  measureNext(view, questions, { asks: MASS, instruments: [scale(0.05)], ...more });

function spreadOf(view: StudyView, output = 'mass', question = 'mass-roll-up'): number {
  const asked = questions.get(question);
  if (!asked) throw new Error(`no ${question}`);
  return Number(out(askStudy(asked, questions, { view }), output).u);
}

/** What one of them foretells for the first open thing. */
const foretold = (reading: NextReading | undefined): number => {
  const effect = reading?.effects[0];
  return effect?.after === undefined ? Number.NaN : effect.after / (effect.u ?? 1);
};

/** The study with a reading taken as told: the value as it stands, the spread of the instrument. */
function taken(view: StudyView, reading: NextReading | undefined): StudyView {
  if (!reading?.of || !reading.instrument) throw new Error('no reading of a cell');
  const { subject, property } = reading.of;
  const cell = view.cell(subject, property);
  if (!('value' in cell)) throw new Error('nothing there');
  return later(view, read(subject, property, withSpread(cell.value, reading.instrument.u)));
}

function withSpread(value: Value, u: number): Value {
  if (value.t === 'scalar') return { ...value, spread: { s: 'normal', u } };
  if (value.t !== 'vector') throw new Error('no number');
  return {
    ...value,
    cov: value.x.flatMap((_, i) => value.x.map((__, j) => (i === j ? u * u : 0))),
  };
}

const gain: Entry = {
  ...{ v: 1, e: 'cause.put' },
  cause: {
    id: 'gain',
    what: 'gain',
    kind: 'ratio',
    label: 'gain of the scale',
    spread: { s: 'normal', u: 0.01 },
  },
};

describe('a total wider than asked', () => {
  const view = studyOf(
    ...['a', 'b', 'c'].flatMap((id, i) => [
      node(id, 'van'),
      read(id, 'mass', mass(10, 0.1 * (i + 1))),
    ]),
  );

  it('is open, and the reading that narrows it most a minute comes first', () => {
    const { open, readings } = next(view);
    expect(open).toMatchObject([{ about: 'total', output: 'mass', wanted: 0.01 }]);
    expect(readings.map((r) => r.label)).toEqual([
      'C name of c, mass, all pieces',
      'B name of b, mass, all pieces',
      'A name of a, mass, all pieces',
    ]);
    expect(readings[0]).toMatchObject({ why: 'spread', instrument: { label: 'scale', u: 0.05 } });
    const [first] = readings;
    expect(first?.perMinute).toBeCloseTo((first?.fall ?? 0) / 4, 12);
  });

  it('of a width that it has is not open', () => {
    const asks = [{ question: 'mass-roll-up', output: 'mass', width: { relative: 0.1 } }] as const;
    expect(next(view, { asks })).toEqual({ open: [], readings: [], leftOut: 0 });
  });

  it('work counts: a quick reading that narrows less may come first', () => {
    const quick = scale(0.08, { label: 'quick scale', minutes: 0.5 });
    expect(next(view, { instruments: [scale(0.05), quick] }).readings[0]?.instrument?.label).toBe(
      'quick scale',
    );
  });

  it('nothing is named that no instrument betters, or reads', () => {
    expect(next(view, { instruments: [] }).readings).toEqual([]);
    expect(next(view, { instruments: [scale(0.05, { range: [20, 50] })] }).readings).toEqual([]);
    expect(next(view, { instruments: [scale(0.05, { kind: 'length' })] }).readings).toEqual([]);
  });
});

describe('what is foretold comes true when the reading is taken', () => {
  const cases: [string, StudyView, MeasureNextOptions?][] = [
    ['measured once: combined', studyOf(node('a', 'van'), read('a', 'mass', mass(10, 0.1)))],
    [
      'measured twice: all three combined',
      studyOf(
        node('a', 'van'),
        read('a', 'mass', mass(10, 0.1)),
        read('a', 'mass', mass(10.05, 0.07)),
      ),
    ],
    [
      'guessed: the guess goes',
      studyOf(node('a', 'van'), read('a', 'mass', mass(10, 1), { how: 'guessed' })),
    ],
    [
      'with a gain shared by others: a part of it goes',
      studyOf(
        gain,
        ...['a', 'b'].flatMap((id) => [
          node(id, 'van'),
          read(id, 'mass', mass(10, id === 'a' ? 0.2 : 0.05), {
            causes: [{ cause: 'gain', effect: 10 }],
          }),
        ]),
      ),
      { instruments: [scale(0.03)] },
    ],
    [
      'a position: one reading of three numbers',
      studyOf(
        node('a', 'van'),
        read('a', 'mass', mass(10, { s: 'exact' })),
        read('a', 'position', point([1, 2, 3], 0.02)),
        node('b', 'van'),
        read('b', 'mass', mass(30, { s: 'exact' })),
        read('b', 'position', point([2, 2, 3], 0.005)),
      ),
      {
        asks: [{ question: 'mass-roll-up', output: 'x', width: { u: 1e-4 } }],
        instruments: [scale(0.002, { kind: 'length', label: 'arm', range: [-10, 10] })],
      },
    ],
  ];

  it.each(cases)('%s', (_, view, more = {}) => {
    const output = more.asks?.[0]?.output ?? 'mass';
    const [first] = next(view, more).readings;
    const now = spreadOf(view, output);
    const fell = spreadOf(taken(view, first), output) / now;
    expect(foretold(first)).toBeLessThan(0.99);
    expect(fell / foretold(first)).toBeCloseTo(1, 6);
  });

  it('a cell in which a reading was chosen is not read again: it would not count', () => {
    const view = studyOf(node('a', 'van'), read('a', 'mass', mass(10, 0.5), { id: 'r1' }), {
      v: 1,
      e: 'choose',
      of: { subject: 'a', property: 'mass', condition: 'kerb' },
      reading: 'r1',
    });
    expect(next(view).readings).toEqual([]);
  });
});

describe('what readings share', () => {
  it('is bettered by what is made for it: a check mass for the gain of a scale', () => {
    const weighed = ['a', 'b', 'c', 'd'].flatMap((id) => [
      node(id, 'van'),
      read(id, 'mass', mass(10, 0.01), { causes: [{ cause: 'gain', effect: 10 }] }),
    ]);
    const check = scale(0, { label: 'check mass', betters: 'gain', relativeU: 0.001 });
    const { readings } = next(studyOf(gain, ...weighed), { instruments: [check] });
    expect(readings).toMatchObject([{ what: 'gain', label: 'gain of the scale' }]);
    const now = Math.hypot(0.4, 0.02);
    expect(foretold(readings[0])).toBeCloseTo(Math.hypot(0.04, 0.02) / now, 6);
    const watch = { ...check, kind: 'time' as const };
    expect(next(studyOf(gain, ...weighed), { instruments: [watch] }).readings).toEqual([]);
  });
});

describe('what keeps answers incomplete', () => {
  const view = studyOf(
    ...['a', 'b', 'c'].map((id) => node(id, 'van')),
    read('a', 'mass', mass(10, 0.5)),
    read('b', 'mass', mass(10)),
  );

  it('comes first: missing readings and unknown spreads, with what they block', () => {
    const { open, readings } = next(view);
    expect(open).toMatchObject([{ u: 'incomplete' }]);
    expect(readings.map((r) => [r.why, r.of?.subject])).toEqual([
      ['spread not known', 'b'],
      ['missing', 'c'],
    ]);
    expect(readings[0]).toMatchObject({ effects: [{ open: 0 }], instrument: { label: 'scale' } });
  });

  it('a claim is open until its word is settled', () => {
    const claim = (value: number): Entry[] => [
      {
        ...{ v: 1, e: 'claim.put' },
        claim: {
          ...{ id: 'c', words: 'heavy', how: 'seen', by: 'R. Example' },
          ...{ heard: '2026-01-05T08:00:00', about: ['a'], evidence: [] },
        },
      },
      {
        ...{ v: 1, e: 'claim.tie' },
        tie: {
          ...{ id: 't', claim: 'c', question: 'mass-roll-up', subject: 'van', output: 'mass' },
          test: { is: 'at least', value, asWritten: `${value} kg` },
        },
      },
    ];
    const weighed = [node('a', 'van'), read('a', 'mass', mass(10, 0.5))];
    const unproven = next(studyOf(...weighed, ...claim(9.5)), { asks: [] });
    expect(unproven.open).toMatchObject([{ about: 'claim', words: 'heavy' }]);
    expect(unproven.readings).toHaveLength(1);
    expect(next(studyOf(...weighed, ...claim(5)), { asks: [] }).open).toEqual([]);
  });

  it('an empty study has nothing open', () => {
    expect(next(studyOf())).toEqual({ open: [], readings: [], leftOut: 0 });
  });
});

describe('instruments of the study', () => {
  it('are at hand beside the usual ones, and used where they gain more', () => {
    const own: Entry = {
      ...{ v: 1, e: 'instrument.put' },
      instrument: { id: 'best', label: 'best scale', kind: 'mass', u: 0.0001, minutes: 0.2 },
    };
    const view = studyOf(own, node('a', 'van'), read('a', 'mass', mass(10, 0.5)));
    const { readings } = measureNext(view, questions, { asks: MASS });
    expect(readings[0]?.instrument).toMatchObject({ label: 'best scale', u: 0.0001 });
    const corner = studyOf(
      own,
      ...['FL', 'FR', 'RL', 'RR'].map((c) => read('van', `cornerLoad.${c}`, mass(400, 3))),
      node('a', 'van'),
      read('a', 'mass', scalar('mass', 1600, 0.1)),
    );
    const gap = [{ question: 'mass-closure', output: 'gap', width: { u: 0.1 } }] as const;
    const told = measureNext(corner, questions, { asks: gap }).readings;
    expect(new Set(told.map((r) => r.instrument?.label))).toEqual(
      new Set(['corner scale pads', 'best scale']),
    );
    const pads = told.filter((r) => r.of?.property.startsWith('cornerLoad'));
    expect(pads.map((r) => r.instrument?.label)).toEqual(Array(4).fill('corner scale pads'));
  });
});
