import { describe, expect, it } from 'vitest';
import type { Figure } from '../../src/engine/index.ts';
import { figureText } from '../../src/report/figure-text.ts';
import { reportFigure } from '../../src/report/figures.ts';
import { answerText, reportModel, summaryText, textTable, wrap } from '../../src/report/index.ts';
import { balance, field, options, removal, SAMPLES, section } from '../drawing/sample-figures.ts';
import { everything } from './fixture.ts';

const input = everything();
const summary = summaryText(reportModel(input));
const [closure, rollUp, silent] = input.answered;

const widest = (text: string): number => Math.max(...text.split('\n').map((l) => [...l].length));

describe('the summary in a terminal', () => {
  it('keeps to 100 columns, with plain groups of digits and no control characters', () => {
    expect(widest(summary)).toBeLessThanOrEqual(100);
    expect(summary).not.toMatch(/[^\P{Cc}\n]|\u202f|NaN|undefined/u);
  });

  it('aligns values, spreads, units and words', () => {
    expect(summary).toContain(
      [
        'Closure',
        '  mass of the parts  1,645.3 ± 0.2 kg',
        '  mass on the scales 1,645.5 ± 1.0 kg',
        '  gap                   −0.2 ± 1.0 kg not distinguishable',
      ].join('\n'),
    );
  });

  it('says what is not complete, not known, open and invented', () => {
    expect(summary).toContain(
      '  mass              1,618.6 kg not complete: 1 value missing, known part ± 0.2',
    );
    expect(summary).toContain('  mass of the parts 1,644.8 kg spread incomplete, known part ± 0.4');
    expect(summary).toContain('not complete: 1 value missing, 1 without a known spread');
    expect(summary).toContain('no number could be worked out');
    expect(summary).toContain('INVENTED DATA');
    expect(summary).toContain('“The seat is light”: open');
    expect(summary).toContain('Not known\n');
  });
});

describe('an answer in a terminal', () => {
  const text = closure ? answerText(closure.answer, closure.question) : '';

  it('shows results, shares of the spread, working, assumptions, sources and cautions', () => {
    expect(widest(text)).toBeLessThanOrEqual(100);
    expect(text).toContain('- not distinguishable: different beyond 2 u');
    expect(text).toMatch(/█▌ +78 % {2}10-001 Frame, mass, all pieces/);
    expect(text).toContain('- skewed: the mean lies at 1,645.8 kg');
    expect(text).toContain('- spread with 7 effective degrees of freedom');
    expect(text).toMatch(/m₁ +462\.50 +± 0\.50 +kg +measured/);
    expect(text).toMatch(/m₂ +3\.\d+ +not complete/);
    expect(text).toContain('  - Made-up source, page 1 (from memory)');
    expect(text).toContain('  - Keep from under the load. (common practice)');
  });

  it('shows groups with the places of findings, and an answer without a number', () => {
    const groups = rollUp ? answerText(rollUp.answer, rollUp.question) : '';
    expect(groups).toMatch(/assembly +rows +mass, kg +rows without a value/);
    expect(groups).toContain('at 30-001 Seat, mass, all pieces, parts.csv, row 7, column mass_kg');
    expect(silent && answerText(silent.answer)).toContain('What is the silent question?');
  });
});

describe('figures in a terminal', () => {
  const shown = (f: Figure): string => figureText(reportFigure(f)).join('\n');
  const blocks = (line: string | undefined): number =>
    [...(line ?? '')].filter((c) => c === '█').length;

  it('keep to 100 columns', () => {
    for (const f of SAMPLES) expect(widest(shown(f))).toBeLessThanOrEqual(100);
  });

  it('are bars of blocks as long as their numbers, with the words behind them', () => {
    const rows = shown(options).split('\n');
    const [aluminium, composite] = ['aluminium', 'composite'].map((t) =>
      rows.find((r) => r.includes(t)),
    );
    expect(blocks(composite) / blocks(aluminium)).toBeCloseTo(5.2 / 4.21, 1);
    expect(aluminium).toMatch(/█─ +4\.21 ± 0\.12 kg, indicated$/);
    expect(composite).toMatch(/5\.20 kg, core not known$/);
    expect(rows.find((r) => r.includes('wood'))).toMatch(/^ +wood +not known$/);
    expect(rows.at(-1)).toBe('  at most 5.5 kg: 5.5 kg');
  });

  it('are marks within their whiskers, and the difference', () => {
    const [, parts, scales, difference] = shown(balance).split('\n');
    expect([...(parts ?? '')].indexOf('┃')).toBeLessThan([...(scales ?? '')].indexOf('┃'));
    expect(difference).toBe('  difference −1.2 ± 1.0 kg');
  });

  it('are a list in which what comes later stands further in', () => {
    const list = shown(removal);
    expect(list).toMatch(/^ {2}Service plug, 0\.500 ± 0\.083 min$/m);
    expect(list).toMatch(
      /^ {6}Pack, 15\.0 ± 1\.5 min; after Carpet, Service plug, Underbody shield$/m,
    );
  });

  it('are words and numbers where nothing can be drawn', () => {
    expect(shown(section)).toContain('shear centre 66 mm, 85 mm');
    expect(shown(field)).toMatch(/400 mm( +[\d.]+ mm){6} +0 mm$/m);
  });
});

describe('text layout', () => {
  it('cuts words longer than a line', () => {
    expect(wrap('abcdefgh ij', '', '', 4)).toEqual(['abcd', 'efgh', 'ij']);
  });

  it('narrows the widest column of a table that does not fit', () => {
    const rows = [['a', 'x'.repeat(50), 'word '.repeat(40)]];
    const columns = ['', 'b', 'c'].map((head) => ({ head, numbers: false }));
    expect(Math.max(...textTable(columns, rows).map((l) => l.length))).toBeLessThanOrEqual(100);
  });
});
