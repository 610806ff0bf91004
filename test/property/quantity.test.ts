import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkSpread,
  differenceOf,
  FormBuilder,
  formatQuantity,
  formatTogether,
  formUncertainty,
  fromSi,
  KIND_NAMES,
  KINDS,
  type Kind,
  kindDef,
  type LinearForm,
  meanShift,
  parseQuantity,
  parseUnit,
  roundToUncertainty,
  type Spread,
  spokenUnit,
  standardUncertainty,
  studentQuantile,
  toSi,
  unitSymbol,
} from '../../src/quantity/index.ts';

/** A kind with one of the units shown for it. */
const kindAndUnit = fc
  .constantFrom(...KIND_NAMES)
  .chain((kind) => fc.record({ kind: fc.constant(kind), unit: fc.constantFrom(...showOf(kind)) }));
const showOf = (kind: Kind): readonly string[] => kindDef(kind).show;

/** Numbers of any size people write: −1e6 to 1e6 with any count of decimals. */
const size = fc.tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -6, max: 5 }));
const positive = size.map(([m, e]) => m * 10 ** e);
const number = fc.tuple(positive, fc.constantFrom(1, -1)).map(([x, sign]) => x * sign);

describe('units', () => {
  test('to SI and back is the same number', () => {
    fc.assert(
      fc.property(kindAndUnit, number, ({ kind, unit }, x) => {
        const back = fromSi(toSi(x, unit, kind), unit, kind);
        const offset = kind === 'tempAbs' ? 300 : 0;
        expect(Math.abs(back - x)).toBeLessThanOrEqual(1e-14 * (Math.abs(x) + offset));
      }),
    );
  });

  test('the printed sign of every unit shown is read as that unit', () => {
    for (const kind of KIND_NAMES)
      for (const code of showOf(kind).filter((c) => c !== '1'))
        expect(spokenUnit(unitSymbol(code), kind), `${kind}: ${unitSymbol(code)}`).toBe(code);
  });

  test('a product has the product of the factors, a quotient their quotient', () => {
    const codes = [...new Set(Object.values(KINDS).flatMap((d) => [...d.show]))].filter(
      (code) => !code.includes('/') && code !== 'Cel',
    );
    const one = fc.constantFrom(...codes);
    fc.assert(
      fc.property(one, one, (a, b) => {
        const factor = (code: string) => parseUnit(code)?.factor ?? Number.NaN;
        expect(factor(`${a}.${b}`) / (factor(a) * factor(b))).toBeCloseTo(1, 12);
        expect((factor(`${a}/(${b})`) * factor(b)) / factor(a)).toBeCloseTo(1, 12);
      }),
    );
  });

  test('no text upsets the unit parser', () => {
    const text = fc.string({ unit: fc.constantFrom(...'mkgs12-./(){}[]*^\'"u°µ ') });
    fc.assert(
      fc.property(fc.oneof(text, fc.string()), (code) => {
        const unit = parseUnit(code);
        if (unit) expect(unit.factor).toBeGreaterThan(0);
        const spoken = spokenUnit(code);
        if (spoken !== undefined) expect(parseUnit(spoken)).toBeDefined();
      }),
      { numRuns: 1000 },
    );
  });
});

describe('parsing and printing', () => {
  /** What rounding moves x and u by at most: half of the last place printed. */
  const half = (u: number) => 0.5001 * 10 ** -roundToUncertainty(0, u).place;

  test('what is printed with its spread is read back, to the place printed', () => {
    fc.assert(
      fc.property(kindAndUnit, number, positive, ({ kind, unit }, x, u) => {
        fc.pre(kind !== 'count' && (kind !== 'tempAbs' || Math.abs(x) > 1e-3));
        const si = { x: toSi(x, unit, kind), u: uToSi(u, unit, kind) };
        const text = formatQuantity({ ...si, unit, kind });
        const parsed = parseQuantity(text, kind);
        if (!parsed.ok) throw new Error(`"${text}": ${parsed.why}`);
        const readU = standardUncertainty(parsed.value.spread, parsed.value.x) ?? Number.NaN;
        const tolerance = half(u) + 1e-9 * (Math.abs(x) + u + (kind === 'tempAbs' ? 300 : 0));
        expect(parsed.unit).toBe(unit);
        expect(Math.abs(fromSi(parsed.value.x, unit, kind) - x), text).toBeLessThan(tolerance);
        expect(Math.abs(uFromSi(readU, unit, kind) - u), text).toBeLessThan(tolerance);
      }),
      { numRuns: 2000 },
    );
  });

  /** A spread is a difference: no offset of its scale. */
  const differenceOfKind = (kind: Kind): Kind => (kind === 'tempAbs' ? 'tempDiff' : kind);
  const uToSi = (u: number, unit: string, kind: Kind) => toSi(u, unit, differenceOfKind(kind));
  const uFromSi = (u: number, unit: string, kind: Kind) => fromSi(u, unit, differenceOfKind(kind));

  test('what is exact is read back to twelve digits', () => {
    fc.assert(
      fc.property(kindAndUnit, number, ({ kind, unit }, x) => {
        fc.pre(kind !== 'count' && kind !== 'tempAbs');
        const text = formatQuantity({ x: toSi(x, unit, kind), u: 0, unit, kind });
        const parsed = parseQuantity(`= ${text}`, kind);
        if (!parsed.ok) throw new Error(`"${text}": ${parsed.why}`);
        expect(parsed.value.spread).toEqual({ s: 'exact' });
        expect(fromSi(parsed.value.x, unit, kind) / x).toBeCloseTo(1, 10);
      }),
    );
  });

  test('numbers side by side are read back, each to the common place', () => {
    const shown = fc.record({ x: number, u: positive });
    fc.assert(
      fc.property(fc.array(shown, { minLength: 1, maxLength: 5 }), (list) => {
        const place = half(Math.max(...list.map(({ u }) => u)));
        const texts = formatTogether(
          list.map((n) => ({ ...n, unit: 'kg', kind: 'mass' })),
          { withUnit: true },
        );
        texts.forEach((text, i) => {
          const parsed = parseQuantity(text.replace('<', ''), 'mass');
          if (!parsed.ok) throw new Error(`"${text}": ${parsed.why}`);
          expect(Math.abs(parsed.value.x - (list[i]?.x ?? 0)), text).toBeLessThan(place + 1e-9);
        });
      }),
    );
  });

  test('no text upsets the parser; what it reads is finite and sound', () => {
    const text = fc.string({ unit: fc.constantFrom(...'0123456789.,-−–±/() ~=½%kgmto\u202f') });
    fc.assert(
      fc.property(fc.oneof(text, fc.string()), fc.constantFrom(...KIND_NAMES), (words, kind) => {
        const parsed = parseQuantity(words, kind);
        if (parsed.ok) {
          expect(checkSpread(parsed.value.spread, parsed.value.x), words).toBeUndefined();
        } else {
          expect(parsed.why).not.toBe('');
          expect(parsed.next).toMatch(/\.$/);
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('u has two digits after rounding, and x ends at the same place', () => {
    fc.assert(
      fc.property(number, positive, (x, u) => {
        const r = roundToUncertainty(x, u);
        const digits = r.u.replace('.', '').replace(/^0+/, '');
        expect(digits.length - Math.max(-r.place, 0)).toBe(2);
        const places = (text: string) => (text.split('.')[1] ?? '').length;
        expect(places(r.x)).toBe(Math.max(r.place, 0));
        expect(places(r.u)).toBe(Math.max(r.place, 0));
      }),
    );
  });
});

describe('spreads', () => {
  test('a triangle has the variance and mean of the textbook form', () => {
    const three = fc.tuple(number, number, number).map((t) => t.sort((a, b) => a - b));
    fc.assert(
      fc.property(three, ([a = 0, c = 0, b = 0]) => {
        const spread: Spread = { s: 'triangular', low: a, high: b };
        const variance = (a * a + b * b + c * c - a * b - a * c - b * c) / 18;
        const scale = Math.max(Math.abs(a), Math.abs(b)) ** 2;
        const u = standardUncertainty(spread, c) ?? Number.NaN;
        expect(Math.abs(u * u - variance)).toBeLessThanOrEqual(1e-14 * scale);
        expect(Math.abs(c + meanShift(spread, c) - (a + b + c) / 3)).toBeLessThanOrEqual(
          1e-14 * Math.sqrt(scale),
        );
        expect(checkSpread(spread, c)).toBeUndefined();
      }),
    );
  });

  test('Student quantiles fall towards the normal one as degrees of freedom rise', () => {
    const p = fc.double({ min: 0.501, max: 0.9999, noNaN: true });
    const dof = fc.double({ min: 0.5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(p, dof, (probability, n) => {
        const t = studentQuantile(probability, n);
        expect(t).toBeGreaterThan(studentQuantile(probability, n * 1.5));
        expect(t).toBeGreaterThan(studentQuantile(probability, Infinity));
        expect(studentQuantile(1 - probability, n)).toBeCloseTo(-t, 6);
      }),
    );
  });
});

describe('linear forms', () => {
  const form: fc.Arbitrary<LinearForm> = fc
    .record({ x: number, by: fc.dictionary(fc.constantFrom(...'abcde'), number) })
    .map(({ x, by }) => ({ x, by: new Map(Object.entries(by)) }));

  test('x − x has no spread', () => {
    fc.assert(
      fc.property(form, (f) => {
        const nothing = differenceOf(f, f);
        expect(nothing.x).toBe(0);
        expect(formUncertainty(nothing)).toBe(0);
      }),
    );
  });

  test('the order of a sum does not matter beyond rounding', () => {
    fc.assert(
      fc.property(fc.array(form, { maxLength: 8 }), (forms) => {
        const add = (list: readonly LinearForm[]) =>
          list.reduce((sum: FormBuilder, f) => sum.add(f), new FormBuilder()).done();
        const [there, back] = [add(forms), add([...forms].reverse())];
        const scale = forms.reduce((s, f) => s + Math.abs(f.x) + formUncertainty(f), 0);
        expect(Math.abs(there.x - back.x)).toBeLessThanOrEqual(1e-14 * scale);
        const off = formUncertainty(there) - formUncertainty(back);
        expect(Math.abs(off)).toBeLessThanOrEqual(1e-13 * scale);
      }),
    );
  });

  test('what is scaled has its spread scaled', () => {
    fc.assert(
      fc.property(form, number, (f, k) => {
        const scaled = new FormBuilder().add(f, k).done();
        const u = Math.abs(k) * formUncertainty(f);
        expect(Math.abs(formUncertainty(scaled) - u)).toBeLessThanOrEqual(1e-12 * u);
      }),
    );
  });
});
