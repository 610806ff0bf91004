/**
 * Where fasteners end, by length and walls: by hand on bare values, and on the demo's record
 * (invented), of which a copy has its inner wall moved. Question fastener-ends.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axisAndSign, placeFastener, type Wall } from '../../../src/engine/index.ts';
import type { Entry, StudyView } from '../../../src/study/index.ts';
import { viewWith } from '../../capture/help.ts';
import { demoStudy } from '../joining/demo-study.ts';
import { askRegistered, out } from '../made-question.ts';
import { asked, codes, shown } from '../structure/asked.ts';

const screw = (reach: string, more: Readonly<Record<string, string>> = {}) => ({
  ...{ name: 'S', of: 'J', seal: 'none', wall: 'inner', ends: '', count: '1' },
  ...{ seat: '537 ± 0.5 mm', sign: 'exactly -1', near: '472 ± 0.5 mm', far: '469 ± 0.5 mm' },
  ...{ reach, ...more },
});
const ends = (...fasteners: Readonly<Record<string, string>>[]) =>
  asked('fastener-ends', { fasteners });

describe('by hand', () => {
  it('30 mm stop short, 66.5 mm end within the wall, 80 mm go through', async () => {
    const answer = await ends(
      screw('30 ± 0.3 mm', { count: '14' }),
      screw('66.5 ± 0.3 mm'),
      screw('80 ± 0.3 mm', { count: '6' }),
    );
    expect(shown(answer, 'dry')).toBe(6);
    expect(shown(answer, 'blind')).toBe(1);
    expect(shown(answer, 'short')).toBe(14);
    expect(answer.detail?.rows.map((r) => r[6])).toEqual(['blind', 'not told', 'through']);
    expect(codes(answer).filter((c) => c === 'fastener-into-dry')).toHaveLength(1);
    expect(codes(answer)).toContain('end-not-told');
  });

  it('a sealed one is no leak path; the other direction counts alike', async () => {
    expect(codes(await ends(screw('80 ± 0.3 mm', { seal: 'O-ring' })))).toEqual([]);
    const left = { seat: '-537 mm', sign: 'exactly 1', near: '-472 mm', far: '-469 mm' };
    expect(shown(await ends(screw('80 mm', left)), 'dry')).toBe(1);
  });
});

describe('placing', () => {
  const wall = (low: number, high: number, x?: readonly [number, number]): Wall => ({
    axis: 1,
    box: [x ?? [undefined, undefined], [low, high], [undefined, undefined]],
  });
  it('walls beside it or behind its seat are not met', () => {
    const f = { seat: [0, 10, 0], axis: 1, sign: 1, reach: 100 } as const;
    const placed = placeFastener(f, [wall(20, 22), wall(0, 5), wall(40, 42, [50, 60])]);
    expect(placed.passed.map((m) => m.near)).toEqual([10]);
    expect(placed.ahead).toBeUndefined();
    expect(placed.clear).toBe(88);
  });
  it('is the same seen in a mirror', () => {
    const number = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(number, number, fc.double({ min: 0.1, max: 50, noNaN: true }), (seat, at, t) => {
        const right = { seat: [0, seat, 0], axis: 1, sign: 1, reach: 80 } as const;
        const left = { ...right, seat: [0, -seat, 0], sign: -1 } as const;
        const one = placeFastener(right, [wall(at, at + t)]);
        const other = placeFastener(left, [wall(-at - t, -at)]);
        expect(one.passed.length).toBe(other.passed.length);
        expect(one.clear).toBeCloseTo(other.clear, 9);
      }),
    );
  });
  it('reads directions', () => {
    expect(axisAndSign('+Y')).toEqual({ axis: 1, sign: 1 });
    expect(axisAndSign('−z')).toEqual({ axis: 2, sign: -1 });
    expect(axisAndSign('X')).toEqual({ axis: 0, sign: 1 });
    expect(axisAndSign('up')).toBeUndefined();
  });
});

/** A copy of the study with the inner wall of the right side frame at other coordinates, mm. */
async function moved(low: number, high: number): Promise<StudyView> {
  const view = await demoStudy('clean');
  const wall = view.find('B-R-IN')?.id ?? '';
  const chosen = [
    ['box.y0', low],
    ['box.y1', high],
  ] as const;
  const entries = chosen.flatMap(([property, mm]): Entry[] => {
    const of = { subject: wall, property, condition: view.header.condition };
    const [old] = view.readings(wall, property);
    const value = {
      ...({ t: 'scalar', kind: 'length', x: mm / 1000 } as const),
      spread: { s: 'normal', u: 0.5e-3 } as const,
    };
    const reading = {
      ...({ id: `${property}-moved`, of, value, asWritten: `${mm} mm`, how: 'seen' } as const),
      ...{ by: 'test', takenAt: { local: '2026-10-06' }, evidence: [], causes: [] },
    };
    return [
      { v: 1, e: 'reading.withdraw', id: old?.reading.id ?? '', subject: wall, why: 'moved' },
      { v: 1, e: 'reading.add', reading },
    ];
  });
  return viewWith(view, entries);
}

describe('of the demo (invented)', async () => {
  const view = await demoStudy('clean');
  const through = async (of: StudyView) => {
    const answer = await askRegistered('fastener-ends', of);
    const rows = answer.detail?.rows.filter((r) => r[6] === 'through') ?? [];
    return { answer, names: rows.map((r) => r[0]), joints: new Set(rows.map((r) => r[1])) };
  };

  it('the six screws of J114, positions 3, 6 and 8 of each side, end in the dry volume', async () => {
    const { answer, names, joints } = await through(view);
    expect(out(answer, 'dry').x).toBe(6);
    expect(names.sort()).toEqual(['X-L3', 'X-L6', 'X-L8', 'X-R3', 'X-R6', 'X-R8']);
    expect([...joints]).toEqual(['J114']);
    expect(codes(answer).filter((c) => c === 'fastener-into-dry')).toHaveLength(6);
    expect(answer.figures?.map((f) => f.f)).toEqual(['drawing']);
  });

  it('with the inner wall of the right side 20 mm further in, three are left', async () => {
    const { answer, names } = await through(await moved(449, 452));
    expect(out(answer, 'dry').x).toBe(3);
    expect(names.every((n) => String(n).startsWith('X-L'))).toBe(true);
    const paths = await askRegistered('crossing-paths', await moved(449, 452));
    expect(out(paths, 'unsealed').x).toBe(3);
  });

  it('with the wall at the end of the screws that is not told', async () => {
    const { answer } = await through(await moved(457.2, 460.2));
    expect(codes(answer)).toContain('end-not-told');
  });
});
