import { describe, expect, it } from 'vitest';
import {
  checkChange,
  type Entry,
  type Instrument,
  isMissing,
  type StudyView,
} from '../../src/study/index.ts';
import { later, MadeStudy, mass, node, read, scalar, studyOf, studyPut } from './made-study.ts';

const scale = (more: Partial<Instrument> = {}): Entry => ({
  ...{ v: 1, e: 'instrument.put' },
  instrument: {
    ...{ id: 'scale A', label: 'scale A', kind: 'mass', u: 0.01, resolution: 0.02 },
    ...{ range: { low: 0.2, high: 30 }, calibrated: '2025-01-01', due: '2026-12-31' },
    ...more,
  },
});

function codes(view: StudyView, property = 'mass'): string[] {
  const cell = view.cell('p1', property);
  return isMissing(cell) ? [] : cell.findings.map((f) => f.code);
}
const weighed = (kg: number, u: number, instrument: Entry) =>
  codes(studyOf(instrument, node('p1', 'van'), read('p1', 'mass', mass(kg, u))));

describe('a reading and its instrument', () => {
  it('within range, in date and no finer than the display is not found', () => {
    expect(weighed(12, 0.01, scale())).toEqual([]);
    expect(weighed(0.2, 0.02 / Math.sqrt(12), scale())).toEqual([]);
  });

  it.each([
    ['too heavy', 31, 0.01, {}, 'outside-instrument'],
    ['too light', 0.1, 0.01, {}, 'outside-instrument'],
    ['after the calibration ran out', 12, 0.01, { due: '2026-01-04' }, 'calibration-past-due'],
    ['finer than a step allows', 12, 0.005, {}, 'finer-than-resolution'],
  ] as const)('%s is found', (_, kg, u, more, code) => {
    expect(weighed(kg, u, scale(more))).toEqual([code]);
  });

  it('off its check mass is told once, for the instrument', () => {
    const check = { nominal: 20, u: 0.001, shown: 20.05, at: '2026-01-02' };
    expect(weighed(12, 0.01, scale({ check }))).toEqual(['instrument-off-its-check']);
    expect(weighed(12, 0.01, scale({ check: { ...check, shown: 20.015 } }))).toEqual([]);
  });

  it('of another kind, or of which nothing is known, says nothing', () => {
    const view = studyOf(
      scale(),
      node('p1', 'van'),
      read('p1', 'thickness', scalar('length', 0.002, 1e-5)),
    );
    expect(codes(view, 'thickness')).toEqual([]);
    expect(
      weighed(1000, 1e-9, { ...scale(), instrument: { id: 'scale A', label: 'x' } } as Entry),
    ).toEqual([]);
  });

  it('keeps what is known of it when a table names it again', () => {
    const again: Entry = {
      v: 1,
      e: 'instrument.put',
      instrument: { id: 'scale A', label: 'scale A' },
    };
    const view = studyOf(scale(), again, node('p1', 'van'), read('p1', 'mass', mass(31, 0.01)));
    expect(codes(view)).toEqual(['outside-instrument']);
  });

  it('is looked at again when more is said of the instrument later', () => {
    const view = studyOf(scale(), node('p1', 'van'), read('p1', 'mass', mass(25, 0.01)));
    expect(codes(view)).toEqual([]);
    expect(codes(later(view, scale({ range: { low: 0, high: 20 } })))).toEqual([
      'outside-instrument',
    ]);
  });

  it.each<[string, Partial<Instrument>]>([
    ['a negative spread', { u: -1 }],
    ['no number', { minutes: Number.NaN }],
    ['a range that falls', { range: { low: 3, high: 1 } }],
    ['a date that is none', { due: 'next summer' }],
  ])('with %s is refused at the door', (_, more) => {
    const made = new MadeStudy();
    const change = made.act([studyPut(), scale(more)]);
    expect(checkChange(change)).toMatchObject([{ code: 'bad-value' }]);
    expect(checkChange(made.act([scale()]))).toEqual([]);
  });
});

describe('readings of one thing', () => {
  const of = (...entries: Entry[]) => studyOf(node('p1', 'van'), ...entries);
  const found = (view: StudyView) => {
    const cell = view.cell('p1', 'mass');
    return isMissing(cell) ? [] : cell.findings;
  };

  it('that agree are combined, with En number and Birge ratio', () => {
    const view = of(read('p1', 'mass', mass(10, 0.3)), read('p1', 'mass', mass(10.5, 0.4)));
    const cell = view.cell('p1', 'mass');
    expect(isMissing(cell) ? undefined : cell.rule).toBe('weighted mean');
    expect(found(view)).toMatchObject([{ code: 'readings-combined', level: 'note' }]);
    expect(found(view)[0]?.value).toContain('En 0.50 at most, Birge ratio 1.00');
  });

  it('that disagree have their En number in the finding', () => {
    const view = of(read('p1', 'mass', mass(10, 0.3)), read('p1', 'mass', mass(11.5, 0.4)));
    expect(found(view)).toMatchObject([{ code: 'readings-disagree' }]);
    expect(found(view)[0]?.value).toContain('En 1.50');
  });

  it('that scatter more than their spreads say are doubted, though no two disagree', () => {
    // Each pair lies within 2 u of its difference, 0.28; together χ²/(n − 1) is 2.06.
    const at = (n: number) =>
      Array.from({ length: n }, (_, i) => read('p1', 'mass', mass(i % 2 ? 9.86 : 10.14, 0.1)));
    const twenty = found(of(...at(20)));
    expect(twenty.map((f) => f.code)).toEqual(['spreads-too-small']);
    expect(twenty[0]?.value).toContain('Birge ratio 1.44');
    expect(found(of(...at(4))).map((f) => f.code)).toEqual(['readings-combined']);
  });

  it('by two people who repeated them have repeatability and reproducibility', () => {
    const by = (person: string, kg: number): Entry => {
      const entry = read('p1', 'mass', mass(kg, 0.2));
      return entry.e === 'reading.add'
        ? { ...entry, reading: { ...entry.reading, by: person } }
        : entry;
    };
    const view = of(by('A', 10), by('A', 10.1), by('B', 10.2), by('B', 10.3));
    const precision = found(view).find((f) => f.code === 'repeatability');
    expect(precision?.value).toContain('0.071 kg within one person (2 degrees of freedom)');
    expect(precision?.value).toContain('0.15 kg between people');
  });
});
