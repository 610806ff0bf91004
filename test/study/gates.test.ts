/**
 * Gates: the lines follow EN 50110 (five rules), IEC 60903 / ASTM D120 (classes of gloves, test
 * every six months) and UN R100 (60 V DC), in our own words; the rest is common practice, no
 * source. What is tested is that no order of arrival shows a step as done without its record.
 */
import { describe, expect, it } from 'vitest';
import { GATES, type GateId, GLOVE_CLASSES } from '../../src/data/index.ts';
import { checkChange, type Entry, fold, lackingOf, type StudyView } from '../../src/study/index.ts';
import { LOWER, lapse, mark, OPEN, override, record, records, STEPS } from './gate-records.ts';
import { MadeStudy } from './made-study.ts';

const studyAfter = (...gestures: readonly (readonly Entry[])[]): StudyView => {
  const made = new MadeStudy();
  for (const entries of [STEPS, ...gestures]) made.act(entries);
  return made.view;
};
const lacking = (gate: GateId, over: Record<string, string | number>): readonly string[] => {
  const entry = record('lower', gate, over);
  const found = GATES.find((g) => g.id === gate);
  return found && entry.e === 'gate.record' ? lackingOf(found, entry.record) : ['none'];
};

describe('which gates a step has', () => {
  const gates = (step: string) =>
    studyAfter()
      .step(step)
      .gates.map((g) => g.gate.id);

  it('the pack brings high voltage, absence of voltage, balance and lowering', () =>
    expect(gates('lower').sort()).toEqual([...LOWER].sort()));
  it('something out of the pack brings the lid and the look at the cells', () =>
    expect(gates('open')).toEqual(expect.arrayContaining([...OPEN])));
  it('words on the step add to what it takes', () =>
    expect(gates('off').sort()).toEqual(['dust', 'hoist-limit']));
});

describe('a record', () => {
  it.each(GATES.map((g) => [g.id]))(
    'of %s can be complete, and lacks each line without it',
    (gate) => {
      expect(lacking(gate, {})).toEqual([]);
      for (const { id, words } of GATES.find((g) => g.id === gate)?.items ?? [])
        expect(lacking(gate, { [id]: '' })[0]).toContain(words);
    },
  );

  it.each([
    ['500 V AC for class 00', 'high-voltage', { packVoltage: 501 }, 'made for 500 V at most'],
    ['class 0 up to 1 000 V', 'high-voltage', { packVoltage: 1001, gloveClass: '0' }, '1000 V'],
    ['a class that there is not', 'high-voltage', { gloveClass: '5' }, 'no class'],
    ['gloves tested over six months ago', 'high-voltage', { gloveTest: '2026-05-24' }, '6 months'],
    ['gloves tested tomorrow', 'high-voltage', { gloveTest: '2026-11-26' }, 'ahead'],
    ['one person alone', 'high-voltage', { second: 'a. licensed' }, 'somebody else'],
    ['less than the maker’s wait', 'high-voltage', { waited: 599 }, 'below waiting time'],
    ['60 V left', 'absence-of-voltage', { packMinus: 60 }, 'not below 60 V'],
    ['60 V the other way', 'absence-of-voltage', { packMinus: -60 }, 'not below 60 V'],
    ['hardware missing', 'pack-lid', { hardwareOut: 11 }, 'not the same as'],
    ['a pack that warms', 'pack-lid', { secondTemperature: 295.5 }, 'above first temperature'],
    ['a warm cell', 'warm-cells', { warmest: 319 }, 'above highest cell temperature'],
    ['a margin below the limit', 'hoist-limit', { marginX: 0.234 }, 'below margin asked for in X'],
    ['an arm over its rating', 'hoist-limit', { armLoad: 1001 }, 'above rating of one arm'],
    ['a table too weak', 'lowering', { tableRating: 400 }, 'below mass of the module'],
  ] as const)('with %s is not complete', (_, gate, over, why) =>
    expect(lacking(gate, over).join()).toContain(why),
  );

  it('glove classes are those of the standards', () =>
    expect(GLOVE_CLASSES).toEqual({
      ...{ '00': 500, '0': 1000, '1': 7500, '2': 17000, '3': 26500, '4': 36000 },
    }));
});

describe('a step is shown as done', () => {
  it('with every record complete before the mark', () => {
    const view = studyAfter(records('lower', LOWER), [mark('lower')]);
    expect(view.step('lower')).toMatchObject({ done: true, notShown: [] });
    expect(view.findings).toEqual([]);
  });

  it.each(LOWER)('not without the record of %s', (gate) => {
    const view = studyAfter(
      records(
        'lower',
        LOWER.filter((g) => g !== gate),
      ),
      [mark('lower')],
    );
    expect(view.step('lower').done).toBe(false);
    expect(view.step('lower').mark?.mark.done).toBe(true);
    expect(view.findings.map((f) => f.code)).toEqual(['step-without-record']);
  });

  it.each(OPEN)('a lid neither, without the record of %s', (gate) => {
    const wanted: GateId[] = ['pack-lid', 'warm-cells', 'hoist-limit'];
    expect(studyAfter(records('open', wanted), [mark('open')]).step('open').done).toBe(true);
    const view = studyAfter(
      records(
        'open',
        wanted.filter((g) => g !== gate),
      ),
      [mark('open')],
    );
    expect(view.step('open').done).toBe(false);
  });

  it('not by a record put down after the mark: it does not reach back', () => {
    const view = studyAfter([mark('lower')], records('lower', LOWER));
    expect(view.step('lower').done).toBe(false);
    expect(
      studyAfter([mark('lower')], records('lower', LOWER), [mark('lower')]).step('lower').done,
    ).toBe(true);
  });

  it.each(['break', 'shift change', 'pack moved'] as const)(
    'not after a %s: the record lapsed',
    (why) => {
      const view = studyAfter(records('lower', LOWER), [lapse(why)], [mark('lower')]);
      expect(view.step('lower').done).toBe(false);
      const fresh = studyAfter(records('lower', LOWER), [lapse(why)], records('lower', LOWER), [
        mark('lower'),
      ]);
      expect(fresh.step('lower').done).toBe(true);
    },
  );

  it('when the pack has moved the records of other steps lapse by themselves', () => {
    const open: GateId[] = ['pack-lid', 'warm-cells', 'hoist-limit'];
    const view = studyAfter(
      records('open', open),
      records('lower', LOWER),
      [mark('lower')],
      [mark('open')],
    );
    expect(view.step('lower').done).toBe(true);
    expect(view.step('open').done).toBe(false);
  });

  it('no more once the record is undone', () => {
    const made = new MadeStudy();
    made.act(STEPS);
    const put = made.act(records('lower', LOWER));
    made.act([mark('lower')]);
    expect(made.view.step('lower').done).toBe(true);
    made.act([], { undoes: put.gesture });
    expect(made.view.step('lower').done).toBe(false);
  });
});

describe('merged from another device', () => {
  it('a mark made offline without the record is kept and not shown, in any order of arrival', () => {
    const made = new MadeStudy();
    made.act(STEPS);
    made.sync('tablet');
    made.act([mark('lower')], { device: 'tablet' });
    made.act(records('lower', LOWER));
    for (const changes of [made.changes, [...made.changes].reverse()]) {
      const view = fold(made.study, changes);
      expect(view.step('lower').done).toBe(false);
      expect(view.step('lower').notShown).toHaveLength(LOWER.length);
      expect(view.gestures()).toHaveLength(3);
    }
  });

  it('a record made before the mark counts, also where it arrives later', () => {
    const made = new MadeStudy();
    made.act(STEPS);
    made.sync('tablet');
    made.act(records('lower', LOWER), { device: 'tablet' });
    const late = made.changes.at(-1);
    made.act([mark('lower')]);
    const without = made.changes.filter((c) => c !== late);
    expect(fold(made.study, without).step('lower').done).toBe(false);
    expect(fold(made.study, made.changes).step('lower').done).toBe(true);
  });
});

describe('an override', () => {
  const refusals = (entry: Entry) => {
    const made = new MadeStudy();
    return checkChange(made.act([entry])).map((r) => r.why);
  };

  it.each(GATES.filter((g) => !g.override).map((g) => [g.id]))(
    'there is none for %s, nor is one heeded',
    (gate) => {
      expect(refusals(override('lower', gate))).toEqual(['there is no override for this gate']);
      const rest = LOWER.filter((g) => g !== gate);
      const view = studyAfter(records('lower', rest), [override('lower', gate)], [mark('lower')]);
      expect(view.step('lower').done).toBe(!LOWER.includes(gate));
    },
  );

  it('elsewhere needs a name and a reason, and stands in for the record', () => {
    expect(refusals(override('off', 'dust', '', 'x'))).toEqual(['an override has no name']);
    expect(refusals(override('off', 'dust', 'A. Lead', ' '))).toEqual([
      'an override gives no reason',
    ]);
    expect(refusals(override('off', 'dust'))).toEqual([]);
    const view = studyAfter([record('off', 'hoist-limit'), override('off', 'dust')], [mark('off')]);
    expect(view.step('off').done).toBe(true);
    expect(view.step('off').gates.find((g) => g.gate.id === 'dust')?.state).toBe('override');
  });

  it('stop is the only other state for absence of voltage, the hoist limit and warm cells', () => {
    const none = GATES.filter((g) => !g.override).map((g) => g.id);
    expect(none).toEqual(
      expect.arrayContaining(['absence-of-voltage', 'hoist-limit', 'warm-cells']),
    );
  });
});
