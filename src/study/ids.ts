/** Identifier of a node, reading, cause, instrument or entry in a study. */
export type Id = string;
/** 26 characters, Crockford base 32, sorts by time: made on the device that made the change. */
export type Ulid = string;
/** Lower-case hex SHA-256 of a blob's bytes. */
export type Sha256 = string;
export type BlobRef = Sha256;

const CROCKFORD = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Source of randomness in [0, 1); handed in so that the engine's layers stay free of host types. */
export type Random = () => number;

/**
 * A fresh ULID: 48 bits of Unix time in milliseconds, then 80 random bits.
 * @throws RangeError when `nowMs` does not fit 48 bits.
 */
export function ulid(nowMs: number, random: Random): Ulid {
  if (!(nowMs >= 0 && nowMs < 2 ** 48)) throw new RangeError(`time ${nowMs} does not fit a ULID`);
  let time = '';
  for (let rest = Math.floor(nowMs), i = 0; i < 10; i++, rest = Math.floor(rest / 32))
    time = CROCKFORD[rest % 32] + time;
  let tail = '';
  for (let i = 0; i < 16; i++) tail += CROCKFORD[Math.floor(random() * 32)];
  return time + tail;
}

export const isUlid = (text: string): boolean => /^[0-7][0-9A-HJKMNP-TV-Z]{25}$/.test(text);

/** Unix time in milliseconds at which a ULID was made; undefined when the text is none. */
export function ulidMs(id: Ulid): number | undefined {
  if (!isUlid(id)) return undefined;
  let ms = 0;
  for (let i = 0; i < 10; i++) ms = ms * 32 + CROCKFORD.indexOf(id.charAt(i));
  return ms;
}
