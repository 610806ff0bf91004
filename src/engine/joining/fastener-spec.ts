import { COARSE_PITCHES, NAMED_PITCHES } from '../../data/index.ts';

/** What the words of a fastener's specification say. Lengths in metres. */
export interface FastenerSpec {
  /** `M12`, `M24x1.5`; absent where a size is given without a thread. */
  readonly thread?: string;
  /** Nominal diameter. */
  readonly diameter: number;
  /** Of the thread: as named, else the coarse pitch of the diameter. */
  readonly pitch?: number;
  /** Pitch that no pitch was named for. */
  readonly coarse?: true;
  readonly length?: number;
  /** Property class (ISO 898-1) or grade of stainless (ISO 3506-1). */
  readonly grade?: string;
  /** Words that are neither. */
  readonly rest: string;
}

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const THREAD = new RegExp(
  String.raw`(?:^|[^\w.])(?:M\s?|m)${NUMBER}(?:\s?[x×*]\s?${NUMBER})?(?:\s?[x×*]\s?${NUMBER})?(?![\w])`,
);
/** A length somewhere in the words is that of a seam; only at their head is it a size. */
const SIZE = new RegExp(String.raw`^\s*${NUMBER}\s?mm\b`);
const GRADE =
  /(?:^|\s)((?:4\.6|4\.8|5\.6|5\.8|6\.8|8\.8|9\.8|10\.9|12\.9)|A[24](?:-(?:50|70|80))?)(?=$|[\s,;])/;

const mm = (text: string): number => Number(text.replace(',', '.'));
const toMetres = (x: number): number => Number((x / 1000).toPrecision(12));

/**
 * Reads "M12x90 10.9", "M24x1.5", "M12x1.5x60", "8 mm". A number behind the diameter is a pitch
 * where it is one of those that a thread may name and far below the diameter, else the length.
 * Undefined when the words give no size.
 */
export function parseFastenerSpec(text: string): FastenerSpec | undefined {
  const found = THREAD.exec(text);
  if (!found) return sizeOnly(text);
  const [whole, d = '', second, third] = found;
  const diameter = mm(d);
  const named = second !== undefined && isPitch(mm(second), diameter) ? mm(second) : undefined;
  const length = named === undefined ? second : third;
  const pitch = named ?? COARSE_PITCHES.get(diameter);
  const grade = GRADE.exec(text)?.[1];
  return {
    thread: `M${diameter}${named === undefined ? '' : `x${named}`}`,
    diameter: toMetres(diameter),
    ...(pitch === undefined ? {} : { pitch: toMetres(pitch) }),
    ...(named === undefined && pitch !== undefined ? { coarse: true } : {}),
    ...(length === undefined ? {} : { length: toMetres(mm(length)) }),
    ...(grade === undefined ? {} : { grade }),
    rest: restOf(text, whole, grade),
  };
}

const isPitch = (x: number, diameter: number): boolean => NAMED_PITCHES.has(x) && x < diameter / 2;

function sizeOnly(text: string): FastenerSpec | undefined {
  const found = SIZE.exec(text);
  if (!found) return undefined;
  return { diameter: toMetres(mm(found[1] ?? '')), rest: restOf(text, found[0], undefined) };
}

const restOf = (text: string, size: string, grade: string | undefined): string =>
  [size, grade ?? '']
    .reduce((left, part) => left.replace(part, ' '), text)
    .replace(/^[\s,;/]+|[\s,;/]+$/g, '')
    .replace(/\s+/g, ' ');
