import { describe, expect, it } from 'vitest';
import type { Entry } from '../../src/study/index.ts';
import { importText, lines, previewText, refusalsOf, START } from './help.ts';

const joint = (id: string): Entry => ({
  v: 1,
  e: 'node.add',
  node: { id, kind: 'joint', parent: 'V', label: id, name: id },
});
const start = [...START, joint('J1'), joint('J2')];

describe('bags', () => {
  const table = lines('bag,joint,spec,count', 'B1,J1,M6x20,62', 'B2,,M6x16,31', 'B3,J9,M8,4');

  it('keep the joint that is written on them, and their count and size', async () => {
    const { view } = await importText('bags', table, { start });
    const [b1, b2, b3] = ['B1', 'B2', 'B3'].map((label) => view.find(label));
    const links = (id = '') => view.links('keeps', id).map((l) => [l.to, l.words]);
    expect([b1, b2, b3].map((b) => b?.kind)).toEqual(['bag', 'bag', 'bag']);
    expect(links(b1?.id)).toEqual([['J1', 'J1']]);
    expect(links(b2?.id)).toEqual([]);
    expect(links(b3?.id)).toEqual([[null, 'J9']]);
    expect(view.cell(b2?.id ?? '', 'count.bag')).toMatchObject({ value: { t: 'count', n: 31 } });
    expect(view.cell(b1?.id ?? '', 'spec')).toMatchObject({ value: { text: 'M6x20' } });
  });

  it('without a joint, or with one that is not there, are named before they come in', async () => {
    const { notes, counts } = await previewText('bags', table, { start });
    expect(notes.map((n) => n.value)).toEqual(['B2', 'B3']);
    expect(counts).toMatchObject({ bags: 3, 'bags without a joint': 2 });
  });

  it.each([
    ['a negative count', 'B1,J1,M6,-3', { row: 2, column: 'count' }, 'a count is negative'],
    ['a broken count', 'B1,J1,M6,2.5', { row: 2, column: 'count' }, '2.5 is no whole number'],
    ['no number', ',J1,M6,3', { row: 2, column: 'bag' }, 'the bag has no number'],
    ['a number that is taken', 'J2,J1,M6,3', { row: 2, column: 'bag' }, 'J2 is in the study'],
  ])('with %s are refused at their place', async (_, row, place, why) => {
    const [first] = await refusalsOf('bags', lines('bag,joint,spec,count', row), { start });
    expect(first?.place).toMatchObject({ file: 'bags.csv', ...place });
    expect(first?.why).toContain(why);
  });

  it('of one number twice are refused', async () => {
    const rows = lines('bag,joint,spec,count', 'B1,J1,M6,3', 'B1,J2,M6,3');
    expect((await refusalsOf('bags', rows, { start }))[0]?.why).toContain('stands in row 2');
  });
});

describe('precedence', () => {
  const headings = 'first,kind,name,before,instead,time_s,time_u_s,tool,people,fluid,why';
  const row = (text: string) => lines(headings, text);

  it('makes steps with their time and tool, and says what stands in the way of what', async () => {
    const table = lines(
      headings,
      'S1,step,a plug,40,,4,0.6,hand,1,,first',
      'J1,,,40,either,,,,,,',
      'J2,,,40,either,,,,,,',
    );
    const { view } = await importText('precedence', table, { start });
    const step = view.find('S1');
    expect(step).toMatchObject({ kind: 'step', name: 'a plug', parent: 'V' });
    expect(view.cell(step?.id ?? '', 'time.removal')).toMatchObject({
      value: { x: 4, spread: { s: 'normal', u: 0.6 } },
    });
    const blocks = view.links('blocks', '40').map((l) => [view.node(l.from)?.label, l.role]);
    expect(blocks).toEqual([
      ['S1', undefined],
      ['J1', 'either'],
      ['J2', 'either'],
    ]);
  });

  it.each([
    ['what is not there', 'J9,,,40,,,,,,,', 'first', 'there is no J9'],
    ['something in its own way', 'J1,,,J1,,,,,,,', 'before', 'J1 is in its own way'],
    ['nothing it stands in the way of', 'J1,,,,,,,,,,', 'before', 'does not say'],
    ['a part made on the way', 'P9,part,,40,,,,,,,', 'kind', 'makes no part'],
    ['a negative time', 'S1,step,x,40,,-4,,,,,', 'time_s', 'negative'],
    ['a vehicle', 'V,,,40,,,,,,,', 'first', 'V is a vehicle'],
  ])('with %s is refused at its place', async (_, text, column, why) => {
    const [first] = await refusalsOf('precedence', row(text), { start });
    expect(first?.place).toMatchObject({ file: 'precedence.csv', row: 2, column });
    expect(first?.why).toContain(why);
  });

  it('in a circle comes in: it is for the way to a part to find', async () => {
    const table = lines('first,before', 'J1,J2', 'J2,J1');
    expect((await importText('precedence', table, { start })).view.links('blocks')).toHaveLength(2);
  });
});

describe('element times', () => {
  it('of the shop are kept with the source of each', async () => {
    const table = lines('element,tmu,source', 'G1A,2.4,"own study, 2026"', 'apb,16.2,own study');
    const { view } = await importText('element-times', table, { start });
    const trial = view.find('ELEMENT-TIMES');
    expect(trial?.kind).toBe('trial');
    expect(view.cell(trial?.id ?? '', 'elementTime.G1A')).toMatchObject({
      value: { x: 2.4, spread: { s: 'exact' } },
      from: [{ reading: { note: 'own study, 2026', how: 'supplied' } }],
    });
    expect(view.cell(trial?.id ?? '', 'elementTime.APB')).toMatchObject({ value: { x: 16.2 } });
  });

  it.each([
    ['no source', 'G1A,2.4,', 'source', 'names no source'],
    ['a negative time', 'G1A,-2,x', 'tmu', 'negative'],
    ['no code', ',2,x', 'element', 'names no element'],
    ['no number', 'G1A,two,x', 'tmu', 'can be read'],
  ])('with %s are refused at their place', async (_, text, column, why) => {
    const table = lines('element,tmu,source', text);
    const [first] = await refusalsOf('element-times', table, { start });
    expect(first?.place).toMatchObject({ row: 2, column });
    expect(first?.why).toContain(why);
  });
});
