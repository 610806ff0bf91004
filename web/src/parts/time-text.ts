import { readClock } from '../../../src/study/index.ts';

/** A time in the reader's own zone, to the minute: 2026-10-05 10:42. */
export function minuteText(iso: string): string {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return '';
  const two = (n: number) => String(n).padStart(2, '0');
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${day} ${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** The time of a change's clock. */
export function timeText(clock: string): string {
  const read = readClock(clock);
  return read ? minuteText(new Date(read.ms).toISOString()) : '';
}
