import { beforeAll, describe, expect, it } from 'vitest';
import { labelSheet } from '../../src/app/index.ts';
import type { LabelSheet } from '../../src/report/index.ts';
import { demoStudy } from '../engine/joining/demo-study.ts';
import { node, read, studyOf, text } from '../study/made-study.ts';

describe('labels of the demo’s bags (invented)', () => {
  let sheet: LabelSheet;
  beforeAll(async () => {
    sheet = labelSheet(await demoStudy('faulty'), '2026-11-25');
  });
  const label = (bag: string) => sheet.labels.find((l) => l.bag === bag);

  it('are one for each bag, none twice', () => {
    expect(sheet.labels).toHaveLength(50);
    expect(new Set(sheet.labels.map((l) => l.code)).size).toBe(50);
  });

  it('say what the bag holds, and both counts where they differ', () => {
    expect(label('B-J103')).toMatchObject({
      joint: 'J103',
      spec: 'M12x90 10.9',
      counts: '18 holes, 17 in the bag',
      holds: '40 pack to 10 sill and torque box',
    });
  });

  it('say of a stray bag that no joint is written on it', () => {
    expect(label('B-stray')).toMatchObject({ joint: '', spec: 'M6x16', counts: '31 in the bag' });
  });
});

describe('labels of a study', () => {
  const joint = (id: string, type: string) => [
    node(id, 'van', 'joint'),
    read(id, 'type', text(type), { how: 'seen' }),
  ];

  it('without bags are those to come, for joints with loose fasteners only', () => {
    const view = studyOf(...joint('j1', 'bolt'), ...joint('j2', 'MIG'), ...joint('j3', 'push pin'));
    expect(labelSheet(view, '2026-11-25').labels.map((l) => l.bag)).toEqual(['B-J1']);
  });

  it('without joints and bags are refused', () => {
    expect(() => labelSheet(studyOf(), '2026-11-25')).toThrow(/neither bags nor joints/);
  });
});
