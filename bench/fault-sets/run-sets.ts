import { performance } from 'node:perf_hooks';
import { askRecord } from './ask-record.ts';
import { ABOVE_U, type Judged, judge } from './judge.ts';
import type { MadeRecord } from './made-record.ts';
import { KNOWN, NO_READING, plantAll, UNKNOWN } from './plant.ts';
import { Random } from './random.ts';
import { type TrueVehicle, trueVehicle } from './true-vehicle.ts';
import { weigh } from './weigh.ts';

/** One record with faults in it, and what the search made of it. */
export interface RunSet {
  readonly judged: readonly Judged[];
  /** Whether the answer says that something is unexplained. */
  readonly saidUnexplained: boolean;
  readonly ms: number;
}

/** How many faults of the catalogue a set has, with and without one of another kind beside them. */
const HOW_MANY = [
  [1, 0.35],
  [2, 0.3],
  [3, 0.2],
  [4, 0.15],
] as const;
const BESIDE_UNKNOWN = [
  [0, 0.5],
  [1, 0.3],
  [2, 0.2],
] as const;
const WITH_UNKNOWN = 0.25;
const WITHOUT_READING = 0.2;

const copyOf = (record: MadeRecord): MadeRecord => structuredClone(record);
const seedOf = (seed: number, i: number): number => seed * 100_003 + i;

/** A set of faults drawn from a seed: one to four of the catalogue, now and then one of another kind. */
function runSet(vehicle: TrueVehicle, seed: number, i: number): RunSet {
  const random = new Random(seedOf(seed, i));
  const before = weigh(vehicle, random);
  const withUnknown = random.uniform() < WITH_UNKNOWN;
  const count = random.weighted<number>(withUnknown ? BESIDE_UNKNOWN : HOW_MANY);
  const kinds = Array.from({ length: count }, () => random.pick(KNOWN));
  if (withUnknown) kinds.push(random.pick(UNKNOWN));
  if (random.uniform() < WITHOUT_READING) kinds.push(NO_READING);
  const record = copyOf(before);
  const planted = plantAll(record, kinds, random);
  const start = performance.now();
  const answer = askRecord(record);
  const ms = performance.now() - start;
  const judged = judge(planted, before, record, askRecordOnce(before), answer);
  const saidUnexplained = answer.findings.some((f) => f.code === 'unexplained');
  return { judged, saidUnexplained, ms };
}

/** Limits of a record without faults: they hardly move from one to the next. */
let clean: ReturnType<typeof askRecord> | undefined;
function askRecordOnce(record: MadeRecord): ReturnType<typeof askRecord> {
  clean ??= askRecord(record);
  return clean;
}

/** Whether a record without faults, weighed anew from a seed, raises a suspect. */
function raisesFalseSuspect(vehicle: TrueVehicle, seed: number, i: number): boolean {
  const answer = askRecord(weigh(vehicle, new Random(seedOf(seed, i) + 0x51ed)));
  return answer.detail !== undefined;
}

/** What all sets come to. */
export interface Figures {
  readonly seed: number;
  readonly sets: number;
  readonly clean: number;
  /** Faults of the catalogue above 3 u of any residual, and of a sum; how many were found. */
  readonly above: Share;
  readonly aboveInSums: Share;
  /** Those below: found all the same. */
  readonly below: Share;
  readonly byKind: Readonly<Record<string, { readonly above: Share; readonly below: Share }>>;
  /** Faults of other kinds above 3 u: said to be unexplained. */
  readonly unexplained: Share;
  /** Sets with faults of the catalogue only that were called unexplained. */
  readonly wronglyUnexplained: Share;
  readonly falseSuspects: Share;
  /** Milliseconds of the answer: median, 95 %, longest. */
  readonly ms: { readonly median: number; readonly most: number; readonly longest: number };
}
export interface Share {
  readonly of: number;
  readonly is: number;
}

/** Runs sets and clean records from a seed. The same seed gives the same figures but for the times. */
export function runSets(seed: number, sets: number, cleanRecords: number): Figures {
  const vehicle = trueVehicle();
  const runs = Array.from({ length: sets }, (_, i) => runSet(vehicle, seed, i));
  const falses = Array.from({ length: cleanRecords }, (_, i) =>
    raisesFalseSuspect(vehicle, seed, i),
  );
  return figuresOf(seed, runs, falses);
}

function figuresOf(seed: number, runs: readonly RunSet[], falses: readonly boolean[]): Figures {
  const all = runs.flatMap((r) => r.judged).filter((j) => j.planted.kind !== 'no reading');
  const known = all.filter((j) => j.planted.known);
  const above = (j: Judged) => j.inAny > ABOVE_U;
  const others = runs.flatMap((r) =>
    r.judged.filter((j) => !j.planted.known && above(j)).map(() => r),
  );
  const knownOnly = runs.filter((r) => r.judged.every((j) => j.planted.known));
  const times = runs.map((r) => r.ms).sort((a, b) => a - b);
  const kinds = [...new Set(known.map((j) => j.planted.kind))].sort();
  return {
    seed,
    sets: runs.length,
    clean: falses.length,
    above: found(known.filter(above)),
    aboveInSums: found(known.filter((j) => j.inSums > ABOVE_U)),
    below: found(known.filter((j) => !above(j))),
    byKind: Object.fromEntries(
      kinds.map((kind) => {
        const own = known.filter((j) => j.planted.kind === kind);
        return [
          kind,
          { above: found(own.filter(above)), below: found(own.filter((j) => !above(j))) },
        ];
      }),
    ),
    unexplained: share(others, (r) => r.saidUnexplained),
    wronglyUnexplained: share(knownOnly, (r) => r.saidUnexplained),
    falseSuspects: share(falses, (f) => f),
    ms: {
      median: times[Math.floor(times.length / 2)] ?? 0,
      most: times[Math.floor(0.95 * times.length)] ?? 0,
      longest: times.at(-1) ?? 0,
    },
  };
}

const share = <T>(all: readonly T[], is: (item: T) => boolean): Share => ({
  of: all.length,
  is: all.filter(is).length,
});
const found = (all: readonly Judged[]): Share => share(all, (j) => j.found);
