import type { Finder, Found } from '../method.ts';

const isThere = (at: Finder, joint: string, property: string): boolean =>
  at.view.properties(joint).includes(property) && !('missing' in at.number(joint, property));

/**
 * Time of one element of a joint as estimated: handwork by predetermined element times where its
 * motions are recorded, else as recorded; turning by run-down where the engaged length is
 * recorded, else as recorded.
 */
export function estimatedTime(at: Finder, joint: string): Found {
  const label = at.view.node(joint)?.label ?? joint;
  const hand =
    at.text(joint, 'elements.install').text === ''
      ? at.number(joint, 'time.access')
      : at.ask('element-time', joint, 'time');
  const drive = isThere(at, joint, 'thread.engaged')
    ? at.ask('run-down-time', joint, 'time')
    : at.number(joint, 'time.drive');
  return at.sum(label, [hand, drive]);
}

/** Read with a stopwatch; undefined where it was not. */
export const stopwatchTime = (at: Finder, joint: string): Found | undefined =>
  isThere(at, joint, 'time.stopwatch') ? at.number(joint, 'time.stopwatch') : undefined;

/** A stopwatch overrides every estimate. */
export const usedTime = (at: Finder, joint: string): Found =>
  stopwatchTime(at, joint) ?? estimatedTime(at, joint);

/** A reading, or zero where the record says nothing of it because there is nothing. */
export const orNone = (at: Finder, id: string, property: string, words: string): Found =>
  isThere(at, id, property) ? at.number(id, property) : at.exact(0, words);
