import { addColumn } from '../forms/multilinear.ts';
import type { Variables } from '../forms/variables.ts';
import { hashOf, mixed, Random } from './random.ts';
import { type Shape, shapeOf } from './shapes.ts';
import { SOBOL_DIMENSIONS, sobolColumn } from './sobol.ts';

/** Whatever puts the samples of variables into columns of numbers. */
export interface Drawn {
  /** Samples in a column. */
  readonly size: number;
  /** Adds `factor` times the variable's samples, in standard uncertainties from nominal. */
  addTo(column: Float64Array, variable: number, factor: number): void;
  /** Fills the column with `x` and that: in one pass what would take two. */
  setTo(column: Float64Array, x: number, variable: number, factor: number): void;
}

/** With no more variables than this each has a column of its own. */
const OWN_COLUMNS = 256;
/** Columns of a pool, for each shape of distribution. */
export const POOL = 256;

export interface DrawsFrom {
  readonly variables: Variables;
  /** Numbers of the variables that matter most, first the one that matters most. */
  readonly leading: readonly number[];
  /** How many variables are to be drawn, leading ones included. */
  readonly count: number;
  readonly seed: number;
  readonly size: number;
  /** Sobol' dimension of the first leading variable; 0 when absent. */
  readonly dimension?: number;
}

/**
 * Samples of a study's variables, block by block, the same for the same study and seed in
 * whatever order they are asked for: a variable's samples hang on its id, the seed and the block.
 * The leading ones come from Sobol' points under a random shift, as many as there are dimensions;
 * every other one is stratified (one value in each of `size` equally likely strata, in random
 * order). Where there are very many, those that matter less take a column of a pool, at a place
 * and with a sign of their own; two that share a column are then as little correlated as two
 * that do not, but for the rare pair that falls on the same place.
 */
export class Draws implements Drawn {
  readonly size: number;
  readonly #own = new Map<number, Float64Array>();
  readonly #pools = new Map<string, Float64Array[]>();
  readonly #ranks: ReadonlyMap<number, number>;
  readonly #shapes: (Shape | undefined)[] = [];
  readonly #alike = new Map<string, Shape>();
  readonly #hashes: number[] = [];
  #salt = 0;

  constructor(private readonly from: DrawsFrom) {
    this.size = from.size;
    this.#ranks = new Map(from.leading.map((number, rank) => [number, rank]));
    this.begin(0);
  }

  /** Goes on to another block: fresh samples, independent of those before. */
  begin(block: number): void {
    this.#salt = mixed(mixed(this.from.seed) ^ block);
    this.#own.clear();
    this.#pools.clear();
  }

  addTo(column: Float64Array, variable: number, factor: number): void {
    if (factor === 0) return;
    const { column: from, place, sign } = this.placed(variable);
    addTimes(column, from, place, sign * factor);
  }

  setTo(column: Float64Array, x: number, variable: number, factor: number): void {
    const { column: from, place, sign } = this.placed(variable);
    setColumn(column, 0, x, sign * factor, from, place);
    setColumn(column, this.size - place, x, sign * factor, from, 0);
  }

  /** The column that a variable's samples stand in, from which place on and with which sign. */
  placed(variable: number): Placed {
    const isOwn = this.from.count <= OWN_COLUMNS || this.#ranks.has(variable);
    if (isOwn) return { column: this.#ownColumn(variable), place: 0, sign: 1 };
    const shape = this.#shape(variable);
    const hash = this.#hashInBlock(variable);
    const column = this.#pooled(shape, hash % POOL);
    return { column, place: this.#placeOf(hash), sign: signOf(shape, hash) };
  }

  #hashInBlock(variable: number): number {
    return mixed(this.#hash(variable) ^ this.#salt);
  }
  #placeOf(hash: number): number {
    return mixed(hash + 1) % this.size;
  }

  #pooled(shape: Shape, i: number): Float64Array {
    const pool = this.#pools.get(shape.key) ?? [];
    this.#pools.set(shape.key, pool);
    pool[i] ??= this.#stratified(shape, Random.of(this.#salt, hashOf(shape.key), i));
    return pool[i];
  }

  #ownColumn(variable: number): Float64Array {
    const held = this.#own.get(variable);
    if (held) return held;
    const { dimension = 0 } = this.from;
    const rank = this.#ranks.get(variable);
    const at = rank === undefined ? SOBOL_DIMENSIONS : dimension + rank;
    const random = Random.of(this.#salt, this.#hash(variable));
    const shape = this.#shape(variable);
    const made =
      at < SOBOL_DIMENSIONS ? this.#even(shape, at, random) : this.#stratified(shape, random);
    this.#own.set(variable, made);
    return made;
  }

  /** Sobol' points of one dimension under a shift of their own. */
  #even({ quantile }: Shape, dimension: number, random: Random): Float64Array {
    const points = sobolColumn(dimension, this.size, random.bits());
    return Float64Array.from(points, (point) => quantile((point + 0.5) / 2 ** 32));
  }

  /** One value within each stratum, in random order. */
  #stratified({ quantile }: Shape, random: Random): Float64Array {
    const order = random.permutation(this.size);
    return Float64Array.from(order, (k) => quantile((k + random.unit()) / this.size));
  }

  /** Variables distributed alike share one shape, and what is tabled of it. */
  #shape(variable: number): Shape {
    const held = this.#shapes[variable];
    if (held) return held;
    const own = shapeOf(this.from.variables.at(variable));
    const shared = this.#alike.get(own.key) ?? own;
    this.#alike.set(own.key, shared);
    this.#shapes[variable] = shared;
    return shared;
  }
  #hash(variable: number): number {
    const held = this.#hashes[variable] ?? hashOf(this.from.variables.at(variable).id);
    this.#hashes[variable] = held;
    return held;
  }
}

/** A column, turned on by `place`, its end going on at its beginning. */
export interface Placed {
  readonly column: Float64Array;
  readonly place: number;
  readonly sign: 1 | -1;
}

const signOf = (shape: Shape, hash: number): 1 | -1 =>
  shape.isSymmetric && hash >>> 31 === 1 ? -1 : 1;

/** Adds a column turned on by `place`, its end going on at its beginning. */
function addTimes(into: Float64Array, column: Float64Array, place: number, factor: number): void {
  const first = into.length - place;
  addColumn(place === 0 ? into : into.subarray(0, first), factor, column.subarray(place));
  if (place > 0) addColumn(into.subarray(first), factor, column.subarray(0, place));
}

/** Sets `into` from `at` on to `x` and `factor` times a column from `place` on, to the end of either. */
function setColumn(
  into: Float64Array,
  at: number,
  x: number,
  factor: number,
  column: Float64Array,
  place: number,
): void {
  const count = Math.min(into.length - at, column.length - place);
  const [to, from] = [into.subarray(at, at + count), column.subarray(place, place + count)];
  let i = 0;
  for (; i + 3 < count; i += 4) {
    to[i] = x + factor * (from[i] as number);
    to[i + 1] = x + factor * (from[i + 1] as number);
    to[i + 2] = x + factor * (from[i + 2] as number);
    to[i + 3] = x + factor * (from[i + 3] as number);
  }
  for (; i < count; i++) to[i] = x + factor * (from[i] as number);
}
