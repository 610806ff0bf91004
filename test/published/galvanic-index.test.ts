/**
 * Question galvanic-pairs: anodic index of metals and its limits of 0.15, 0.25 and 0.50 V, as
 * reprinted in general references that go back to MIL-STD-889: gold to silver 0.15 V, copper
 * 0.35 V and steels with 18 % chromium 0.50 V seen in reprints; steel 0.85, aluminium 0.90, zinc
 * 1.25 and magnesium 1.75 V from memory.
 */
import { describe, expect, it } from 'vitest';
import { GALVANIC_LIMITS, METALS, metalsIn } from '../../src/data/index.ts';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

const pairs = async (...joints: readonly (readonly [string, string, string])[]) =>
  askWritten((await loadQuestion('galvanic-pairs')).question, {
    joints: joints.map(([from, to, fastener]) => ({ count: '4', from, to, fastener })),
    place: 'harsh',
  });

describe('galvanic pairs', () => {
  it.each([
    ['copper', 'steel', 0.5, 'steel or iron'],
    ['steel', 'AZ91 magnesium', 0.9, 'magnesium'],
    ['stainless steel', 'Al 6082-T6', 0.4, 'aluminium'],
    ['carbon fibre / epoxy', 'Al 6082-T6', 0.9, 'aluminium'],
  ])('%s beside %s differ by %d V: %s is attacked', async (a, b, volts, attacked) => {
    const answer = await pairs([a, b, '']);
    expect(out(answer, 'beyond').x).toBe(1);
    expect(answer.detail?.rows[0]?.[4]).toBeCloseTo(volts, 9);
    expect(answer.detail?.rows[0]?.[2]).toBe(attacked);
  });

  it('steel beside aluminium is unlike, and within 0.15 V', async () => {
    const answer = await pairs(['steel', 'Al 6082-T6', 'steel']);
    expect([out(answer, 'unlike').x, out(answer, 'beyond').x]).toEqual([1, 0]);
  });

  it('a pair of 0.40 V stands where the place is controlled only', async () => {
    const { question } = await loadQuestion('galvanic-pairs');
    const joints = [{ count: '1', from: 'stainless steel', to: 'Al 6082-T6', fastener: '' }];
    const beyond = (place: string) => out(askWritten(question, { joints, place }), 'beyond').x;
    expect(['harsh', 'normal', 'controlled'].map(beyond)).toEqual([1, 1, 0]);
  });

  it('silver beside gold would just stand; a fastener counts as a third metal', async () => {
    expect(METALS.find((m) => m.id === 'silver')?.index).toBeCloseTo(GALVANIC_LIMITS.harsh, 12);
    const answer = await pairs(['Al 6082-T6', 'Al 6060', 'copper'], ['PA66', 'PP', 'steel']);
    expect([out(answer, 'unlike').x, out(answer, 'beyond').x]).toEqual([1, 1]);
    expect(out(answer, 'elements').x).toBe(4);
  });
});

describe('metals in the words of a material', () => {
  it.each([
    ['Al 6082-T6', ['aluminium']],
    ['galvanised deep-draw steel', ['zinc']],
    ['stainless steel 1.4301', ['stainless']],
    ['steel/EPDM', ['iron']],
    ['Al 1060 / Cu', ['copper', 'aluminium']],
    ['PP talc', []],
    ['A2L class', []],
    ['metal-look ABS', []],
  ])('%s', (text, ids) => expect(metalsIn(text).map((m) => m.id)).toEqual(ids));
});
