import { type MediumClass, type SealClass, sealClass } from '../../../data/index.ts';
import { type Fastener, type Placed, placeFastener, type Wall } from './place-fastener.ts';

/** What is known of a zone, a barrier and a crossing; named by what people call them. */
export interface ZoneIn {
  readonly name: string;
  readonly medium: MediumClass | undefined;
}
export interface BarrierIn {
  readonly name: string;
  /** Zones on the side of the smaller and of the larger coordinate. */
  readonly a: string | undefined;
  readonly b: string | undefined;
  readonly wall?: Wall;
}
export interface CrossingIn {
  readonly name: string;
  /** Barriers it is said to go through; found from its place where none is said. */
  readonly barriers: readonly string[];
  readonly fastener?: Fastener;
  readonly seal: string;
  readonly count: number;
}
export interface SealingIn {
  readonly zones: readonly ZoneIn[];
  readonly barriers: readonly BarrierIn[];
  readonly crossings: readonly CrossingIn[];
}

/** A crossing with what it goes through, and the zones that it joins. */
export interface Crossing {
  readonly in: CrossingIn;
  readonly barriers: readonly BarrierIn[];
  readonly placed?: Placed<PlacedWall>;
  readonly seal: SealClass | undefined;
  /** Zones before, between and behind its barriers; not there where they make no chain. */
  readonly zones?: readonly string[];
  /** For a fastener: where it ends, a zone or, blind, within a barrier. */
  readonly end?: { readonly zone: string } | { readonly within: string };
}

/** A barrier as a wall that fasteners may meet. */
export interface PlacedWall extends Wall {
  readonly barrier: BarrierIn;
}

/** Everything that leads through the same barriers from zone to zone, side by side. */
export interface Way {
  readonly zones: readonly [string, string];
  readonly barriers: readonly BarrierIn[];
  readonly crossings: readonly Crossing[];
  /** Rank of the weakest seal among them. */
  readonly rank: number;
}

/** The rank of a crossing whose seal is of no class or not recorded is that of none. */
export const UNKNOWN_RANK = 1;
export const rankOf = ({ seal }: Crossing): number => seal?.rank ?? UNKNOWN_RANK;

/** Zones and what leads from one to another. */
export class SealingGraph {
  readonly crossings: readonly Crossing[];
  readonly ways: readonly Way[];
  readonly #ways = new Map<string, Way[]>();

  constructor(readonly input: SealingIn) {
    const named = new Map(input.barriers.map((b) => [b.name, b]));
    const walls = placedWalls(input.barriers);
    const classes = new Map<string, SealClass | undefined>();
    this.crossings = input.crossings.map((c) => {
      // Thousands of crossings share a few words.
      if (!classes.has(c.seal)) classes.set(c.seal, sealClass(c.seal));
      return crossingOf(c, classes.get(c.seal), named, walls);
    });
    this.ways = waysOf(this.crossings);
    for (const way of this.ways)
      for (const zone of way.zones) this.#ways.set(zone, [...(this.#ways.get(zone) ?? []), way]);
  }

  /** What leads out of a zone. */
  from = (zone: string): readonly Way[] => this.#ways.get(zone) ?? [];
}

export const placedWalls = (barriers: readonly BarrierIn[]): readonly PlacedWall[] =>
  barriers.flatMap((barrier) => (barrier.wall ? [{ ...barrier.wall, barrier }] : []));

function crossingOf(
  c: CrossingIn,
  seal: SealClass | undefined,
  named: ReadonlyMap<string, BarrierIn>,
  walls: readonly PlacedWall[],
): Crossing {
  const placed = c.fastener ? placeFastener(c.fastener, walls) : undefined;
  const said = c.barriers.flatMap((name) => named.get(name) ?? []);
  const barriers = said.length > 0 ? said : (placed?.passed.map((m) => m.wall.barrier) ?? []);
  const sign = c.fastener?.sign;
  const zones = chainOf(barriers, placed ? sign : undefined);
  const end = placed ? endOf(placed, sign ?? 1, zones?.at(-1)) : undefined;
  return {
    in: c,
    barriers,
    seal,
    ...(placed ? { placed } : {}),
    ...(zones ? { zones } : {}),
    ...(end ? { end } : {}),
  };
}

function endOf(
  { within, ahead }: Placed<PlacedWall>,
  sign: 1 | -1,
  behind: string | undefined,
): Crossing['end'] {
  if (within) return { within: within.wall.barrier.name };
  const before = ahead && (sign > 0 ? ahead.wall.barrier.a : ahead.wall.barrier.b);
  const zone = behind ?? before;
  return zone === undefined ? undefined : { zone };
}

/**
 * Zones before, between and behind barriers one behind the other. Along an axis the sides of each are
 * known; else two that share a zone tell it. Undefined where they make no chain.
 */
function chainOf(
  barriers: readonly BarrierIn[],
  sign: 1 | -1 | undefined,
): readonly string[] | undefined {
  const [first] = barriers;
  if (!first) return undefined;
  const starts = sign === undefined ? [first.a, first.b] : [sign > 0 ? first.a : first.b];
  for (const start of starts) {
    const zones = start === undefined ? undefined : walk(start, barriers);
    if (zones) return zones;
  }
  return undefined;
}

function walk(start: string, barriers: readonly BarrierIn[]): readonly string[] | undefined {
  const zones = [start];
  for (const barrier of barriers) {
    const next = across(barrier, zones.at(-1) ?? '');
    if (next === undefined) return undefined;
    zones.push(next);
  }
  return zones;
}

/** The zone on the other side of a barrier; undefined where it does not touch this one. */
const across = ({ a, b }: BarrierIn, zone: string): string | undefined =>
  a === zone ? b : b === zone ? a : undefined;

type Leg = Pick<Way, 'zones' | 'barriers'>;

function waysOf(crossings: readonly Crossing[]): Way[] {
  const ways = new Map<string, { readonly leg: Leg; readonly of: Crossing[] }>();
  for (const c of crossings)
    for (const leg of legsOf(c)) {
      const key = keyOf(leg);
      const held = ways.get(key);
      if (held) held.of.push(c);
      else ways.set(key, { leg, of: [c] });
    }
  return [...ways.values()].map(({ leg, of }) => ({
    ...leg,
    crossings: of,
    rank: of.reduce((least, c) => Math.min(least, rankOf(c)), Number.POSITIVE_INFINITY),
  }));
}

/** The same for the same barriers from either side: a barrier alone tells its zones. */
function keyOf({ barriers }: Leg): string {
  const [first, last] = [barriers[0]?.name ?? '', barriers.at(-1)?.name ?? ''];
  if (barriers.length === 1) return first;
  const names = barriers.map((b) => b.name);
  return (first < last ? names : names.reverse()).join('\n');
}

/** A crossing leads from its first zone to its last, and past each of its barriers to the next one. */
function legsOf({ zones, barriers }: Crossing): readonly Leg[] {
  const [first, last] = [zones?.[0], zones?.at(-1)];
  if (!zones || first === undefined || last === undefined) return [];
  const whole: Leg = { zones: [first, last], barriers };
  if (barriers.length === 1) return [whole];
  const steps = barriers.map((barrier, i): Leg => {
    return { zones: [zones[i] ?? '', zones[i + 1] ?? ''], barriers: [barrier] };
  });
  return [whole, ...steps];
}
