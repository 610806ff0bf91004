import { expect, it } from 'vitest';
import { loadAll, measureNext } from '../../../src/engine/index.ts';
import { node, read, scalar, studyOf } from '../../study/made-study.ts';

it('where the stiffness of a plate hangs on a thickness told by eye, the wall-thickness gauge is named', async () => {
  const view = studyOf(
    node('floor', 'van'),
    read('floor', 'material', { t: 'text', text: 'steel' }),
    read('floor', 'thickness', scalar('length', 0.0025, 0.0003)),
  );
  const asks = [
    {
      ...{ question: 'plate-stiffness', output: 'D', subject: 'floor' },
      width: { relative: 0.05 },
    },
  ];
  const { readings } = measureNext(view, await loadAll(), { asks });
  expect(readings[0]?.label).toContain('thickness');
  expect(readings[0]?.instrument?.label).toBe('wall-thickness gauge');
});
