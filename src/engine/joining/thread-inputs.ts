import { PITCH_SOURCE } from '../../data/index.ts';
import type { Finder, Found } from '../method.ts';
import { parseFastenerSpec } from './fastener-spec.ts';

/** The pitch of a joint's thread: as measured, else as its specification names or implies it. */
export function threadPitch(at: Finder, joint: string): Found {
  const measured = at.number(joint, 'thread.pitch');
  if (!('missing' in measured)) return measured;
  const spec = parseFastenerSpec(at.text(joint, 'spec').text);
  if (spec?.pitch === undefined)
    return at.missing(measured.label, 'thread pitch: neither measured nor told by the size');
  return at.tabled({
    id: `pitch/${spec.thread}`,
    words: `pitch of ${spec.thread}`,
    x: spec.pitch,
    spread: { s: 'exact' },
    how: 'supplied',
    source: spec.coarse ? PITCH_SOURCE : 'named in the specification',
  });
}
