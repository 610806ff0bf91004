import { describe, expect, it } from 'vitest';
import type { MeasureNext } from '../../src/engine/index.ts';
import { nextText, reportModel, reportNext, summaryText } from '../../src/report/index.ts';
import { everything } from './fixture.ts';

const next: MeasureNext = {
  open: [
    {
      ...{ about: 'claim', words: 'it is heavy', question: 'q', subject: 's', output: 'mass' },
      ...{ kind: 'mass', unit: 'kg', x: 10, u: 0.5 },
      decision: { word: 'not proven', d: 0.2, u: 0.5, dof: null, rule: 'a rule' },
    },
    {
      ...{ about: 'total', words: 'gap', question: 'q', subject: 's', output: 'gap' },
      ...{ kind: 'mass', unit: 'kg', x: -0.2, u: 1.02, wanted: 0.5 },
      decision: { word: 'not distinguishable', d: -0.2, u: 1.02, dof: null, rule: 'a rule' },
    },
    {
      ...{ about: 'total', words: 'cost', question: 'q', subject: 's', output: 'cost' },
      ...{ kind: 'money', unit: '{u}', u: 'incomplete' },
    },
  ],
  readings: [
    {
      ...{ why: 'missing', label: '90-001 Coolant, mass', what: 'reading', place: {} },
      ...{ effects: [{ open: 2 }], fall: 0, perMinute: 0 },
    },
    {
      ...{ why: 'spread', label: 'corner load', what: 'reading', place: {} },
      instrument: { label: 'corner scale pads', kind: 'mass', u: 0.5, minutes: 15 },
      effects: [{ open: 1, u: 1.02, after: 0.957 }],
      ...{ fall: 0.06, perMinute: 0.06 },
    },
  ],
  leftOut: 3,
};

describe('what to measure next', () => {
  it('is told in words: what is open and why, then the readings with their work and effect', () => {
    const { open, lacking, bettering } = reportNext(next);
    expect(open.map((o) => [o.words, o.state, o.asked])).toEqual([
      ['“it is heavy”', 'not proven', ''],
      ['gap', 'wider than asked', '± 0.500 kg'],
      ['cost', 'not complete', ''],
    ]);
    expect(lacking).toMatchObject([
      {
        label: '90-001 Coolant, mass',
        why: 'missing',
        instrument: 'no instrument at hand',
        effects: ['cost'],
      },
    ]);
    expect(bettering).toMatchObject([
      { minutes: '15 min', perMinute: '6 % a min', effects: ['gap: ± 1.02 kg to ± 0.957 kg'] },
    ]);
  });

  it('stands on the terminal, and in the summary of a report', () => {
    const text = nextText(reportNext(next));
    expect(text).toContain('corner load: corner scale pads · 15 min · 6 % a min');
    expect(text).toContain('and 3 more');
    const summary = summaryText(reportModel({ ...everything(), next }));
    expect(summary).toContain('Measure next');
    expect(summary).toContain('90-001 Coolant, mass: missing');
  });

  it('says so when nothing is open', () => {
    expect(nextText(reportNext({ open: [], readings: [], leftOut: 0 }))).toContain(
      'Nothing is open',
    );
  });
});
