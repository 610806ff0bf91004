import type { Entry } from '../../src/study/index.ts';
import { Device, studyPut } from '../store/make-changes.ts';

export const STUDY = 'study-small';

/** A mass in kg of a part, with a standard uncertainty of 0.01 kg. */
export const mass = (subject: string, kg: number): Entry => ({
  v: 1,
  e: 'reading.add',
  reading: {
    id: `mass of ${subject}`,
    of: { subject, property: 'mass', condition: 'kerb' },
    value: { t: 'scalar', kind: 'mass', x: kg, spread: { s: 'normal', u: 0.01 } },
    asWritten: `${kg} ± 0.01 kg`,
    how: 'measured',
    by: 'R. Example',
    takenAt: { local: '2026-01-05T09:00:00', zone: 'UTC' },
    instrument: 'bench scale',
    evidence: [],
    causes: [],
  },
});

const node = (id: string, kind: 'vehicle' | 'part', parent: string | null): Entry => ({
  v: 1,
  e: 'node.add',
  node: { id, kind, parent, label: `no. ${id}`, name: `made-up ${id}` },
});

/** A made-up study of two weighed parts, the same on every run. */
export function smallStudy() {
  const device = new Device(STUDY);
  const changes = [
    device.change([studyPut('small, made up'), node('van', 'vehicle', null)]),
    device.change([node('door', 'part', 'van'), node('bonnet', 'part', 'van')]),
    device.change([mass('door', 12.5), mass('bonnet', 8.25)]),
  ];
  return { device, changes };
}
