import { describe, expect, it } from 'vitest';
import type { Entry, NodeKind } from '../../src/study/index.ts';
import { importText, lines, refusalsOf, START } from './help.ts';

const node = (id: string, kind: NodeKind, parent: string): Entry => ({
  v: 1,
  e: 'node.add',
  node: { id, kind, parent, label: id, name: id },
});
const start = [
  ...START,
  node('40-1', 'part', '40'),
  node('40-28', 'part', '40'),
  node('10-1', 'part', '10'),
  node('J1', 'joint', 'V'),
  node('front module', 'trial', 'V'),
];

describe('modules', () => {
  it('keep what was in them, and what of an assembly was not', async () => {
    const table = lines(
      'module,holds,without',
      '40,40,40-28',
      'front module,10-1; 40-1,',
      'M3,10,',
    );
    const { view } = await importText('modules', table, { start });
    const links = (label: string) =>
      view
        .links('weighed-with', view.find(label)?.id)
        .filter((l) => l.from === view.find(label)?.id);
    expect(links('40').map((l) => [l.to, l.role])).toEqual([
      ['40', undefined],
      ['40-28', 'without'],
    ]);
    expect(links('front module').map((l) => l.to)).toEqual(['10-1', '40-1']);
    expect(view.find('M3')?.kind).toBe('trial');
    expect(links('M3').map((l) => l.to)).toEqual(['10']);
  });

  it.each([
    ['no module', ',40,', 'module', 'names no module'],
    ['a part as the module', '40-1,40,', 'module', '40-1 is a part'],
    ['nothing in it', '40,,', 'holds', 'holds nothing'],
    ['a number that is not there', '40,40;41,', 'holds', 'there is no 41'],
    ['a joint in it', '40,J1,', 'holds', 'J1 is a joint'],
    ['less a number that is not there', '40,40,99', 'without', 'there is no 99'],
  ])('with %s are refused at their place', async (_, row, column, why) => {
    const [first] = await refusalsOf('modules', lines('module,holds,without', row), { start });
    expect(first?.place).toMatchObject({ file: 'modules.csv', row: 2, column });
    expect(first?.why).toContain(why);
  });

  it('of one name twice, or with a list already, are refused', async () => {
    const twice = lines('module,holds', '40,40-1', '40,40-28');
    expect((await refusalsOf('modules', twice, { start }))[0]?.why).toContain('stands in row 2');
    const again = [
      ...start,
      {
        v: 1,
        e: 'link.add',
        link: { id: 'l', kind: 'weighed-with', from: '40', to: '40-1' },
      } as const,
    ];
    const one = lines('module,holds', '40,40-1');
    expect((await refusalsOf('modules', one, { start: again }))[0]?.why).toContain('has a list');
  });
});
