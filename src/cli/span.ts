import { RefusalError } from '../study/index.ts';

const UNITS: Readonly<Record<string, number>> = {
  s: 1000,
  min: 60_000,
  h: 3_600_000,
  d: 86_400_000,
};

/** Reads "24h", "90 min" or "7d"; milliseconds. @throws RefusalError `bad-call`. */
export function spanMs(text: string, option: string): number {
  const [, digits = '', unit = ''] = /^(\d+)\s*([a-z]+)$/.exec(text.trim()) ?? [];
  const ms = Number(digits) * (UNITS[unit] ?? Number.NaN);
  if (ms > 0) return ms;
  throw new RefusalError({
    code: 'bad-call',
    place: { column: option },
    value: text,
    why: 'this is no span of time',
    next: 'Write it like 24h, 90min or 7d.',
  });
}
