import type { BoundLook, DetailTable, Found, Looked } from '../method.ts';
import { HOIST_NAMES } from './hoist-inputs.ts';
import { type OnPads, padsAlone, padsPulled } from './on-pads.ts';

const x = (found: Found | undefined): number =>
  found === undefined || 'missing' in found ? Number.NaN : found.form.x;

/** The nominal sums and scalars of a balance. */
export function nominalOnPads({ scalars, tables }: BoundLook): OnPads {
  const given = Object.fromEntries(HOIST_NAMES.map((name) => [name, x(scalars[name])]));
  const sums = { mass: 0, placed: 0, momentX: 0, momentY: 0, momentZ: 0 };
  for (const { cells } of tables.parts ?? []) {
    const mass = x(cells.mass) * x(cells.stays);
    if (Number.isNaN(mass)) continue;
    sums.mass += mass;
    const place = [x(cells.x), x(cells.y), x(cells.z)] as const;
    if (place.some(Number.isNaN)) continue;
    sums.placed += mass;
    sums.momentX += mass * place[0];
    sums.momentY += mass * place[1];
    sums.momentZ += mass * place[2];
  }
  return { ...given, ...sums } as unknown as OnPads;
}

/** What each pad carries: by the split assumed, and between which loads it must lie. */
export function padsTable(bound: BoundLook): Looked {
  const on = nominalOnPads(bound);
  const detail: DetailTable = {
    title: 'Loads on the pads: four are statically indeterminate, so each has a range',
    columns: [
      { name: 'pad' },
      { name: 'by the split assumed', kind: 'mass', unit: 'kg' },
      { name: 'at least', kind: 'mass', unit: 'kg' },
      { name: 'at most', kind: 'mass', unit: 'kg' },
      { name: 'with the pull, by the split', kind: 'mass', unit: 'kg' },
      { name: 'with the pull, at most', kind: 'mass', unit: 'kg' },
      { name: 'rating of the arm', kind: 'mass', unit: 'kg' },
    ],
    rows: padsAlone(on).map((pad, i) => {
      const pulled = padsPulled(on)[i];
      const loads = [pad.split, pad.least, pad.most, pulled?.split, pulled?.most, on.armRating];
      return [pad.pad, ...loads.map((load) => shown(load))];
    }),
  };
  return { detail };
}

const shown = (load: number | undefined): number | string =>
  load === undefined || !Number.isFinite(load) ? 'not known' : load;
