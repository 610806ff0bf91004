import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';

const css = readFileSync(join(ROOT, 'web/src/styles/tokens.css'), 'utf8');

/** Day and night value of a token. */
function token(name: string): readonly [day: string, night: string] {
  const found = new RegExp(`--${name}: light-dark\\((#\\w{6}), (#\\w{6})\\)`).exec(css);
  if (!found?.[1] || !found[2]) throw new Error(`tokens.css has no --${name}`);
  return [found[1], found[2]];
}

/** Relative luminance and contrast ratio after WCAG 2.2, "relative luminance". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

it('the ratio is that of WCAG: black on white is 21, and grey #767676 on white is 4.54', () => {
  expect(contrast('#000000', '#ffffff')).toBe(21);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

describe.each(['ink', 'soft', 'open'])('%s', (ink) => {
  it.each(['paper', 'tint'])('on %s stands at 7:1 or more, by day and by night', (ground) => {
    for (const theme of [0, 1] as const)
      expect(contrast(token(ink)[theme], token(ground)[theme])).toBeGreaterThanOrEqual(7);
  });
});
