import { CommanderError } from 'commander';
import { type Refusal, RefusalError } from '../study/index.ts';

/**
 * Ends a command badly that has printed its result already: refusals follow as text, but not
 * after the one JSON object, which says it all.
 */
export function refuseAfter([first, ...more]: readonly Refusal[], json: boolean | undefined): void {
  if (!first) return;
  if (json) throw new CommanderError(2, 'hoistside.found', first.why);
  throw new RefusalError(first, ...more);
}
