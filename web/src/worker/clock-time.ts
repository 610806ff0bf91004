import { readClock } from '../../../src/study/index.ts';

/** ISO 8601 time of a change's clock, UTC. */
export const timeOf = (clock: string): string => {
  const read = readClock(clock);
  return read ? new Date(read.ms).toISOString() : '';
};
