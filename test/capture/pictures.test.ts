import { describe, expect, it } from 'vitest';
import { pictureLength, readExif, withoutPlace } from '../../src/capture/index.ts';
import { madeJpeg } from './made-jpeg.ts';

const has = (bytes: Uint8Array, text: string): boolean => Buffer.from(bytes).includes(text);

describe('notes of the camera', () => {
  it('time, which way is up, and that a place is told', () => {
    expect(readExif(madeJpeg({ taken: '2026:10:05 09:30:01', orientation: 6 }))).toEqual({
      takenAt: '2026-10-05T09:30:01',
      orientation: 6,
      hasPlace: true,
    });
  });
  it('none, broken or cut off: nothing, and no failure', () => {
    const whole = madeJpeg({ taken: '2026:10:05 09:30:01' });
    for (const cut of [0, 1, 20, 40, 70])
      expect(readExif(whole.subarray(0, cut)).takenAt).toBeUndefined();
    expect(readExif(new Uint8Array([0x89, 0x50, 0x4e, 0x47]))).toEqual({
      orientation: 1,
      hasPlace: false,
    });
  });
});

describe('a copy for others', () => {
  it('has no place, no XMP, the same picture data and the same way up', () => {
    const original = madeJpeg({ taken: '2026:10:05 09:30:01', orientation: 6 }, 500);
    const before = original.slice();
    const copy = withoutPlace(original);
    expect(original).toEqual(before);
    expect(has(original, 'GPS') && has(original, 'GPSLatitude')).toBe(true);
    expect(has(copy, 'GPS')).toBe(false);
    expect(has(copy, 'xap')).toBe(false);
    expect(has(copy, '2026')).toBe(false);
    expect(readExif(copy)).toEqual({ orientation: 6, hasPlace: false });
    expect(copy.subarray(-502)).toEqual(original.subarray(-502));
  });
  it('of a PNG has no notes', () => {
    const chunk = (kind: string, data: string) =>
      Buffer.concat([
        Buffer.from([0, 0, 0, data.length]),
        Buffer.from(kind + data),
        Buffer.alloc(4),
      ]);
    const png = Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
      chunk('IHDR', 'x'),
      chunk('eXIf', 'place'),
      chunk('tEXt', 'owner'),
      chunk('IDAT', 'picture'),
    ]);
    const copy = withoutPlace(png);
    expect(has(copy, 'picture')).toBe(true);
    expect(has(copy, 'place') || has(copy, 'owner')).toBe(false);
  });
});

describe('a length from a scale in the picture', () => {
  it('by the rule of three, its spread by the law of propagation (JCGM 100:2008, 5.1.2)', () => {
    // 100 mm over 400 px, a thing of 100 px, 0.5 px a coordinate, u(scale) 0.1 mm:
    // 25 mm; 0.25 mm/px · 0.7071 px = 0.1768, 25/400 · 0.7071 = 0.0442, 25/100 · 0.1 = 0.025.
    const scale = {
      points: [
        [0, 0],
        [400, 0],
      ],
      lengthM: 0.1,
      uM: 0.0001,
    } as const;
    const { x, u } = pictureLength(
      scale,
      [
        [10, 10],
        [70, 90],
      ],
      0.5,
    );
    expect(x).toBeCloseTo(0.025, 12);
    expect(u * 1000).toBeCloseTo(Math.hypot(0.17678, 0.04419, 0.025), 4);
  });
  it('is refused for a scale without length', () => {
    expect(() =>
      pictureLength(
        {
          points: [
            [1, 1],
            [1, 1],
          ],
          lengthM: 1,
          uM: 0,
        },
        [
          [0, 0],
          [1, 1],
        ],
        1,
      ),
    ).toThrow(RangeError);
  });
});
