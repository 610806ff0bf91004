import { describe, expect, it } from 'vitest';
import { hasRequired } from '../../src/capture/index.ts';

describe('headings that give all that a form must have', () => {
  it('are known by any of their names', () =>
    expect(hasRequired('readings', ['Part', 'what', 'reading', 'remark'])).toBe(true));
  it('lack one that is left out', () =>
    expect(hasRequired('readings', ['number', 'name', 'mass [kg]'])).toBe(false));
  it('may serve another form that asks for less', () =>
    expect(hasRequired('parts', ['number', 'mass / kg'])).toBe(true));
});
