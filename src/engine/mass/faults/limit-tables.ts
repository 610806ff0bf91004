import type { DetailTable } from '../../method.ts';
import { type Detection, SHOWS_FROM_U, spreads } from './detection.ts';
import { FAULT_WORDS } from './fault-words.ts';
import type { MassRecord } from './mass-record.ts';
import type { SetUp } from './set-up.ts';

/** From where on each sum of a record says by itself that something is wrong. */
export function limitTable({ scorer }: SetUp): DetailTable {
  const u = spreads(scorer);
  return {
    title: `A slip shows in a sum from ${SHOWS_FROM_U} u on`,
    columns: [
      { name: 'sum' },
      { name: 'from', kind: 'mass', unit: 'kg' },
      { name: 'from, moment', kind: 'massMoment', unit: 'kg.m' },
    ],
    rows: scorer.residuals.of.map((r, d) => {
      const limit = SHOWS_FROM_U * (u[d] ?? 0);
      const name =
        r.id === 'mass'
          ? 'whole vehicle'
          : r.kind === 'mass'
            ? r.id
            : `whole, ${r.id.toUpperCase()}`;
      return r.kind === 'mass' ? [name, limit, ''] : [name, '', limit];
    }),
  };
}

/** In how many rows a slip of each kind would show, and the largest that would not. */
export function kindTable(detection: Detection, { rows }: MassRecord): DetailTable {
  return {
    title: 'Slips that these scales, modules and positions would show, by kind',
    columns: [
      { name: 'slip' },
      { name: 'rows', kind: 'count' },
      { name: 'would show in', kind: 'count' },
      { name: 'smallest that shows', kind: 'mass', unit: 'kg' },
      { name: 'largest that does not', kind: 'mass', unit: 'kg' },
      { name: 'in' },
    ],
    rows: detection.kinds.map((k) => [
      FAULT_WORDS[k.kind].kind,
      k.rows,
      k.shows,
      Number.isFinite(k.least) ? k.least : 'none',
      k.hidden,
      k.hiddenRow === undefined ? '' : (rows[k.hiddenRow]?.number ?? ''),
    ]),
  };
}
