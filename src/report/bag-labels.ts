import QRCode from 'qrcode';

/** What stands on the label of one bag of fasteners. */
export interface BagLabel {
  /** Number of the bag. */
  readonly bag: string;
  /** Number of its joint; empty where none is written on it. */
  readonly joint: string;
  /** What the joint holds and onto what, in words. */
  readonly holds: string;
  readonly spec: string;
  /** "18 holes, 17 in the bag". */
  readonly counts: string;
  /** Text behind the square code. */
  readonly code: string;
}

/** A sheet of labels, and what it says of itself. */
export interface LabelSheet {
  readonly title: string;
  readonly study: string;
  readonly revision: string;
  /** ISO 8601 date of print. */
  readonly date: string;
  readonly invented: boolean;
  readonly labels: readonly BagLabel[];
}

/** Text of a bag's code: it names the study and the bag, whatever the bag is moved to. */
export const bagCode = (study: string, bag: string): string => `hoistside:bag:${study}:${bag}`;

/** Level M of ISO/IEC 18004 bears about 15 % of damage: oil and tape on a bag. */
const LEVEL = 'M';
/** Quiet zone around the code, in modules (ISO/IEC 18004: four). */
const QUIET = 4;

/** A square code (ISO/IEC 18004) as SVG, quiet zone included. */
export const codeSvg = (text: string): Promise<string> =>
  QRCode.toString(text, { type: 'svg', errorCorrectionLevel: LEVEL, margin: QUIET });

/** Side of a code in modules, quiet zone included, and which modules are dark, row by row. */
export function codeModules(text: string): { readonly side: number; readonly dark: string } {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: LEVEL });
  const side = modules.size + 2 * QUIET;
  const cells: string[] = [];
  for (let y = 0; y < modules.size; y++)
    for (let x = 0; x < modules.size; x++)
      if (modules.get(y, x)) cells.push(`M${x + QUIET},${y + QUIET}h1v1h-1z`);
  return { side, dark: cells.join('') };
}
