import {
  type Answer,
  askWritten,
  loadQuestion,
  type WrittenInputs,
} from '../../src/engine/index.ts';
import { type MadeRecord, type MadeRow, SPREADS } from './made-record.ts';

const { question: faults } = await loadQuestion('mass-faults');
const { question: lift } = await loadQuestion('cg-height-axle-lift');

/**
 * Asks which rows of a made-up record are likely wrong, as anyone would who has it on paper;
 * without the inputs named.
 */
export function askRecord(record: MadeRecord, without: readonly string[] = []): Answer {
  const given = Object.entries(inputsOf(record)).filter(([name]) => !without.includes(name));
  return askWritten(faults, Object.fromEntries(given));
}

const kg = (x: number, u: number): string => `${x} ± ${u} kg`;
const mm = (x: number, u: number): string => `${1000 * x} ± ${1000 * u} mm`;

function inputsOf(record: MadeRecord): WrittenInputs {
  const { corners, wheelbase, track } = record;
  return {
    parts: record.rows.map(partOf),
    modules: record.modules.map((m) => ({
      moduleMass: kg(m.mass, SPREADS.moduleKg),
      holds: m.holds.join(';'),
    })),
    tares: record.tares.map((t) => ({ tare: kg(t.mass, 0.002) })),
    joints: record.joints.map(({ spec, count, ends }) => ({
      spec,
      count: String(count),
      ends: ends.join(';'),
    })),
    ...Object.fromEntries(Object.entries(corners).map(([at, x]) => [at, kg(x, SPREADS.cornerKg)])),
    wheelbase: mm(wheelbase, SPREADS.wheelbaseM),
    frontTrack: mm(track.front, SPREADS.trackM),
    rearTrack: mm(track.rear, SPREADS.trackM),
    height: heightOf(record),
  };
}

const partOf = (row: MadeRow): Record<string, string> => ({
  number: row.number,
  name: row.name,
  assembly: row.assembly,
  pieces: String(row.pieces),
  instrument: row.instrument,
  written: row.mass,
  mass: row.mass === '' ? '' : `${row.mass} ± ${row.massU} kg`,
  x: mm(row.at[0], row.positionU),
  y: mm(row.at[1], row.positionU),
  z: mm(row.at[2], row.positionU),
});

/** Height with its spread, from the record's own axle lift. */
function heightOf({ lifts, corners, wheelbase, radius }: MadeRecord): string {
  const mass = Object.values(corners).reduce((a, b) => a + b, 0);
  const { height } = askWritten(lift, {
    lifts: lifts.map(({ angle, gain }) => ({
      angle: `${angle} ± ${SPREADS.angleRad} rad`,
      gain: kg(gain, SPREADS.gainKg),
    })),
    mass: kg(mass, 2 * SPREADS.cornerKg),
    wheelbase: mm(wheelbase, SPREADS.wheelbaseM),
    radius: mm(radius, SPREADS.radiusM),
  }).outs;
  if (!height) throw new Error('the made-up axle lift gives no height');
  return mm(height.x, height.knownU);
}
