/**
 * Lines: routes and distances by hand, losses of pressure (Darcy and Weisbach with Hagen and
 * Poiseuille or Blasius, from memory, closed form) and of voltage (Ohm), and what the demo
 * (invented) gives. Questions line-census, pressure-drop and voltage-drop.
 */
import { describe, expect, it } from 'vitest';
import { routeLength, routeOf, routeToBox, routeToRoute } from '../../../src/engine/lines/route.ts';
import { importText } from '../../capture/help.ts';
import { demoStudy } from '../joining/demo-study.ts';
import { askRegistered, out } from '../made-question.ts';
import { asked, codes, off, shown } from '../structure/asked.ts';

describe('routes', () => {
  const route = routeOf('0 0 0; 3000 0 0; 3000 4000 0') ?? [];
  it('are read as points in mm, or not at all', () => {
    expect(route).toEqual([
      [0, 0, 0],
      [3, 0, 0],
      [3, 4, 0],
    ]);
    expect(routeOf('−10 5 2; 1, 2, 3')?.[0]).toEqual([-0.01, 0.005, 0.002]);
    expect(routeOf('left, then up')).toBeUndefined();
    expect(routeOf('1 2; 3 4')).toBeUndefined();
    expect(routeOf('')).toBeUndefined();
  });
  it('have a length, and distances to boxes and to each other', () => {
    expect(routeLength(route)).toBe(7);
    const box = (x0: number, x1: number) =>
      [
        [x0, x1],
        [1, 2],
        [undefined, undefined],
      ] as const;
    // Nearest point of the first leg (y = 0) is 1 m below the box.
    expect(routeToBox(route, box(1, 2))).toBeCloseTo(1, 9);
    expect(routeToBox(route, box(2.9, 3.1))).toBeCloseTo(0, 6);
    expect(routeToBox(route, box(5, 6))).toBeCloseTo(2, 9);
    expect(
      routeToRoute(route, [
        [1, -0.5, 1],
        [1, 0.5, 1],
      ]),
    ).toBeCloseTo(1, 6);
  });
});

const drop = (flow: string, viscosity: string) =>
  asked('pressure-drop', {
    ...{ length: 'exactly 10 m', bore: 'exactly 20 mm', flow, viscosity },
    ...{ density: 'exactly 1000 kg/m3', losses: 'exactly 0' },
  });

describe('pressure-drop', () => {
  it('laminar: 128 η L q / (π d⁴)', async () => {
    const answer = await drop('exactly 1 L/min', 'exactly 10 mPa.s');
    const q = 1e-3 / 60;
    expect(
      off(shown(answer, 'loss') * 1000, (128 * 0.01 * 10 * q) / (Math.PI * 0.02 ** 4)),
    ).toBeLessThan(1e-9);
    expect(shown(answer, 'lambda') * shown(answer, 'reynolds')).toBeCloseTo(64, 9);
  });
  it('turbulent: λ 0.03164 at Re 10 000, and the loss it makes', async () => {
    // v = 0.5 m/s in 20 mm: Re = 1000 · 0.5 · 0.02 / 0.001.
    const litres = 0.5 * (Math.PI / 4) * 0.02 ** 2 * 60_000;
    const answer = await drop(`exactly ${litres} L/min`, 'exactly 1 mPa.s');
    expect(shown(answer, 'reynolds')).toBeCloseTo(10_000, 6);
    expect(shown(answer, 'lambda')).toBeCloseTo(0.03164, 5);
    expect(shown(answer, 'loss')).toBeCloseTo((0.03164 * 500 * 125) / 1000, 3);
  });
  it('bends add their own; in between it is said', async () => {
    const bare = await drop('exactly 10 L/min', 'exactly 1 mPa.s');
    const bent = await asked('pressure-drop', {
      ...{ length: 'exactly 10 m', bore: 'exactly 20 mm', flow: 'exactly 10 L/min' },
      ...{ viscosity: 'exactly 1 mPa.s', density: 'exactly 1000 kg/m3', losses: 'exactly 4' },
    });
    const v = shown(bare, 'speed');
    expect(1000 * (shown(bent, 'loss') - shown(bare, 'loss'))).toBeCloseTo(2000 * v ** 2, 6);
    expect(codes(await drop('exactly 2.8 L/min', 'exactly 1 mPa.s'))).toContain(
      'neither-laminar-nor-turbulent',
    );
  });
});

it('voltage-drop: 10 m of 10 mm² copper at 20 °C and 100 A, one way: 1.724 V, 172.4 W', async () => {
  const answer = await asked('voltage-drop', {
    ...{ length: 'exactly 10 m', area: 'exactly 10 mm2', current: 'exactly 100 A' },
    ...{ voltage: 'exactly 12 V', resistivity: 'exactly 17.24 nOhm.m', ways: 'exactly 1' },
  });
  expect(shown(answer, 'drop')).toBeCloseTo(1.724, 9);
  expect(shown(answer, 'power')).toBeCloseTo(172.4, 9);
  expect(shown(answer, 'share')).toBeCloseTo(14.367, 3);
});

const line = (name: string, more: Readonly<Record<string, string>> = {}) => ({
  ...{ name, kind: 'brake', circuit: name, through: 'bay', from: 'unit', to: 'caliper' },
  ...{ route: '', crush: '', face: '', replaced: '', length: 'exactly 4 m' },
  ...{ clips: '11', connectors: '4', ...more },
});
const census = (...lines: Readonly<Record<string, string>>[]) => asked('line-census', { lines });

describe('line-census', () => {
  it.each([
    ['line-ends-nowhere', { to: '' }],
    ['line-without-zone', { through: '' }],
    ['route-not-read', { route: 'round the back' }],
    ['bend-too-tight', { bend: 'exactly 9 mm', bendLimit: 'exactly 15 mm' }],
  ])('%s', async (code, more) => {
    const answer = await census(line('BR1', more));
    const finding = answer.findings.find((f) => f.code === code);
    expect(finding?.place.subject).toBe('BR1');
    expect(codes(await census(line('BR1')))).toEqual([]);
  });

  it('two circuits of one kind in one zone share a place; two kinds or two zones do not', async () => {
    expect(codes(await census(line('BR1'), line('BR2')))).toEqual(['circuits-share-place']);
    expect(codes(await census(line('BR1'), line('BR2', { through: 'sill' })))).toEqual([]);
    expect(codes(await census(line('BR1'), line('HV', { kind: 'high voltage' })))).toEqual([]);
  });

  it('of the demo (invented): six lines, two brake circuits side by side 20 mm apart', async () => {
    const answer = await askRegistered('line-census', await demoStudy('clean'));
    expect(out(answer, 'lines').x).toBe(6);
    expect(shown(answer, 'length')).toBeCloseTo(5.1 + 4.6 + 3.2 + 0.62 + 3.9 + 0.45, 6);
    const shared = answer.further?.find((t) => t.title.startsWith('Circuits that share'));
    const channel = shared?.rows.find((r) => r[0] === 'P-CHANNEL');
    expect(channel?.[2]).toBe('brake 1, brake 2');
    expect(Number(channel?.[3])).toBeLessThan(0.0201);
    expect(answer.detail?.rows.find((r) => r[0] === 'L-HV')?.[8]).toMatch(/mm to P-CRUSH-/);
    expect(answer.figures?.map((f) => f.f).slice(0, 2)).toEqual(['graph', 'drawing']);
  });

  it('a line without a length goes by its points, five per cent unsure', async () => {
    const { view } = await importText(
      'lines',
      'number,kind,route_mm\nL1,air,0 0 0; 3000 0 0; 3000 4000 0\n',
    );
    const answer = await askRegistered('line-census', view);
    expect(out(answer, 'length').x).toBeCloseTo(7, 9);
    expect(out(answer, 'length').u).toBeCloseTo(0.35, 9);
    expect(codes(answer).filter((c) => c === 'line-ends-nowhere')).toHaveLength(2);
  });
});
