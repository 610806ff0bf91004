/** Decimal sign between seconds and thousandths: a point in WebVTT, a comma in SubRip. */
type Sign = '.' | ',';

const PATTERNS: Readonly<Record<Sign, RegExp>> = {
  '.': /^(?:(\d+):)?(\d{2}):(\d{2})\.(\d{3})$/,
  ',': /^(?:(\d+):)?(\d{2}):(\d{2}),(\d{3})$/,
};

/**
 * Seconds of a time after "collect a WebVTT timestamp" (W3C WebVTT): hours may be left out and
 * have any number of digits; minutes and seconds have two and go to 59. Undefined for all else.
 */
export function timestampS(text: string, sign: Sign): number | undefined {
  const [whole, hours = '0', minutes, seconds, thousandths] = PATTERNS[sign].exec(text) ?? [];
  if (whole === undefined || Number(minutes) > 59 || Number(seconds) > 59) return undefined;
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds) + Number(thousandths) / 1000;
}

/** The two times of a timing line; what follows the second one (places on a screen) is let go. */
export function timingLine(line: string, sign: Sign): { fromS: number; toS: number } | undefined {
  const [, from = '', to = ''] =
    /^[ \t\f]*([\d:.,]+)[ \t\f]*-->[ \t\f]*([\d:.,]+)(?![^ \t\f])/.exec(line) ?? [];
  const [fromS, toS] = [timestampS(from, sign), timestampS(to, sign)];
  return fromS === undefined || toS === undefined ? undefined : { fromS, toS };
}
