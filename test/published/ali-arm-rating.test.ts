/**
 * ANSI/ALI ALIS:2022, Safety requirements for installation and service of vehicle lifts: a lift
 * rated 10 000 lb in all has arms of 2 500 lb; a vehicle of 9 000 lb with 3 000 lb on its front
 * and 6 000 lb on its rear axle puts 1 500 and 3 000 lb on an arm, which is not acceptable though
 * the total is within the rating (question hoist-balance; own inputs, published rule).
 */
import { expect, it } from 'vitest';
import { askWritten, loadQuestion } from '../../src/engine/index.ts';
import { out } from '../engine/made-question.ts';

const { question } = await loadQuestion('hoist-balance');
const POUND = 0.45359237;

const axle = (number: string, pounds: number, x: number) => ({
  ...{ number, mass: `exactly ${pounds} [lb_av]`, stays: 'exactly 1' },
  ...{ x: `exactly ${x} mm`, y: 'exactly 0 mm', z: 'exactly 600 mm' },
});
const ask = (front: number, rear: number) =>
  askWritten(question, {
    parts: [axle('front', front, 0), axle('rear', rear, 2700)],
    ...{ front: 'exactly 0 mm', rear: 'exactly 2700 mm' },
    ...{ left: 'exactly -560 mm', right: 'exactly 560 mm' },
    ...{ shareX: 'exactly 15 %', leastX: 'exactly 250 mm', shareY: 'exactly 15 %' },
    ...{ pull: 'exactly 0 kg', pullX: 'exactly 0 mm', pullY: 'exactly 0 mm' },
    ...{ rating: 'exactly 10000 [lb_av]', armRating: 'exactly 2500 [lb_av]' },
  });

it('1 500 and 3 000 lb an arm: the arm fails by 500 lb, the total holds with 1 000 lb', () => {
  const answer = ask(3000, 6000);
  for (const pad of ['padFL', 'padFR']) expect(out(answer, pad).x / POUND).toBeCloseTo(1500, 6);
  for (const pad of ['padRL', 'padRR']) expect(out(answer, pad).x / POUND).toBeCloseTo(3000, 6);
  expect(out(answer, 'spareArm').x / POUND).toBeCloseTo(-500, 6);
  expect(out(answer, 'spareArm').decision?.word).toBe('fails');
  expect(out(answer, 'spareLift').x / POUND).toBeCloseTo(1000, 6);
  expect(out(answer, 'spareLift').decision?.word).toBe('holds');
});

it('shared out evenly the same vehicle holds on each arm', () => {
  const answer = ask(4500, 4500);
  expect(out(answer, 'spareArm').x / POUND).toBeCloseTo(250, 6);
  expect(out(answer, 'spareArm').decision?.word).toBe('holds');
});
