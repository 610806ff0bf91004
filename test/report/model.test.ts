import { describe, expect, it } from 'vitest';
import { askWritten, question } from '../../src/engine/index.ts';
import { answerText, reportModel } from '../../src/report/index.ts';
import { everything } from './fixture.ts';
import { LITERAL } from './signs.ts';

const model = reportModel(everything());
const answers = model.sections.flatMap((s) => s.answers);

describe('the report model', () => {
  it('is plain data', () => {
    expect(JSON.parse(JSON.stringify(model))).toEqual(model);
    expect(JSON.stringify(model)).not.toContain('null');
  });

  it('orders sections, and puts first what decides something', () => {
    expect(model.sections.map((s) => s.id)).toEqual(['balance', 'other']);
    expect(answers[0]?.question).toBe('closure');
  });

  it('rounds results of an answer to one place and keeps what is known of an incomplete one', () => {
    const [parts, scales, gap] = answers[0]?.outs.map((o) => o.shown) ?? [];
    expect([parts?.value, parts?.spread]).toEqual(['1\u202f645.3', '0.2']);
    expect([scales?.value, scales?.spread]).toEqual(['1\u202f645.5', '1.0']);
    expect([gap?.value, gap?.spread]).toEqual(['−0.2', '1.0']);
    const [short] = answers.find((a) => a.question === 'roll-up')?.outs.map((o) => o.shown) ?? [];
    expect([short?.value, short?.spread, short?.incomplete]).toEqual([
      '1\u202f618.6',
      '0.2',
      'not complete: 1 value missing',
    ]);
  });

  it('sets results alike side by side and does not combine them', () => {
    const [comparison] = model.sections[0]?.comparisons ?? [];
    expect(comparison?.entries.map((e) => e.from)).toEqual(['Closure', 'Roll-up']);
    expect(comparison?.figure?.table.rows).toHaveLength(2);
  });

  it('draws a balance with the difference between its two sides', () => {
    const [figure] = answers[0]?.figures ?? [];
    expect(figure?.table.rows).toEqual([
      ['mass of the parts', '1\u202f645.3 ± 0.2 kg', ''],
      ['mass on the scales', '1\u202f645.5 ± 1.0 kg', ''],
      ['difference', '−0.2 ± 1.0 kg', 'not distinguishable'],
    ]);
    const said = figure?.pictures.flatMap((p) => p.inks).filter((ink) => ink.i === 'words') ?? [];
    expect(said.map((w) => w.text)).toContain('−0.2 ± 1.0 kg, not distinguishable');
    expect(figure?.alt).toContain('not distinguishable');
  });

  it('shares the variance of a result among its causes', () => {
    const [parts] = answers[0]?.outs ?? [];
    const shares = [...(parts?.contributions ?? []), ...(parts?.others ? [parts.others] : [])];
    expect(shares.reduce((sum, c) => sum + c.share, 0)).toBeCloseTo(1, 12);
    expect(parts?.contributions.map((c) => c.label)).toEqual([
      '10-001 Frame, mass, all pieces',
      '20-001 Wheel, mass, all pieces',
    ]);
    expect(parts?.others?.words).toBe('1 other');
  });

  it('gathers all that is not known', () => {
    const all = model.unknown.flatMap((u) => [u.what, ...u.items]).join('\n');
    for (const words of [
      '30-001 Seat, mass, all pieces',
      'assumed share',
      '40-001 Pump (brass / cast)',
      'Silent question, 60-001: nothing of it is known',
      '“The seat is light”: tied to no question',
    ])
      expect(all).toContain(words);
  });

  it('counts a claim open until a decision answers it', () => {
    expect(model.claims.map((c) => c.state)).toEqual(['holds', 'open']);
  });

  it('shows a question nobody knew of with no line changed', () => {
    const unheard = question({
      id: 'unheard-of',
      version: 1,
      title: 'Half of it',
      wording: 'How much is half of it?',
      subject: 'study',
      section: { id: 'halves', title: 'Halves', order: 50 },
      inputs: [
        {
          in: 'scalar',
          name: 'whole',
          symbol: 'w',
          kind: 'length',
          unit: 'mm',
          meaning: 'the whole',
          range: [0, 100],
          where: 'nowhere',
          find: (at) => at.missing('whole', 'made up'),
        },
      ],
      body: {
        body: 'row',
        outputs: [
          {
            name: 'half',
            symbol: 'h',
            kind: 'length',
            unit: 'mm',
            meaning: 'half of it',
            shown: 'h = w / 2',
            of: (w) => w / 2,
          },
        ],
      },
      modelError: {},
      sources: [{ title: 'Made up', status: 'from memory' }],
      assumptions: [],
      cautions: [],
      checks: [{ what: '', source: '', status: 'common practice', test: '' }],
      example: { whole: '5 ± 0.2 mm' },
    });
    const answer = askWritten(unheard, unheard.example);
    const asked = { question: unheard, subject: '', answer };
    const report = reportModel({ ...everything(), answered: [asked] });
    expect(report.summary[0]?.outs[0]?.shown).toMatchObject({ value: '2.50', spread: '0.10' });
    expect(report.methods[0]?.formulas[0]?.shown).toBe('h = w / 2');
    expect(answerText(answer, unheard)).toMatch(/half of it +2\.50 ± 0\.10 mm/);
  });

  it('leaves text as it was written', () => {
    expect(model.study.title).toBe(`Cart ${LITERAL}`);
  });
});
