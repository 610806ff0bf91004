/** What making one piece takes, worked out by a process model; SI. What is left out is not needed. */
export interface Work {
  /** Mass bought for a piece, and mass of the piece. */
  readonly gross?: number;
  readonly net?: number;
  /** Bought in for a piece: fasteners, cores, gas. */
  readonly bought?: number;
  /** Time of one cycle of the machine, and pieces that come out of it. */
  readonly cycle?: number;
  readonly pieces?: number;
  /** Size of the machine over that of the machine the rate belongs to. */
  readonly size?: number;
  /** Price of one set of tools. */
  readonly tool?: number;
  /** Mean time of all pieces over that of the first, where a learning curve is asked for. */
  readonly learned?: number;
}

/** Prices, rates and ways of running, by name; SI. */
export interface Running {
  readonly price: number;
  readonly scrapPrice: number;
  readonly machine: number;
  readonly labour: number;
  readonly crew: number;
  readonly availability: number;
  readonly rejects: number;
  readonly setUp: number;
  readonly batch: number;
  readonly toolLife: number;
  readonly volume: number;
  readonly years: number;
  readonly overhead: number;
  readonly profit: number;
  readonly packaging: number;
  readonly freight: number;
}

/** What a process does not ask for leaves the sum as it is. */
export const NEUTRAL: Running = {
  ...{ price: 0, scrapPrice: 0, machine: 0, labour: 0, crew: 0, availability: 1, rejects: 0 },
  ...{ setUp: 0, batch: 1, toolLife: 1, volume: 1, years: 1 },
  ...{ overhead: 1, profit: 0, packaging: 0, freight: 0 },
};

/** Cost of one good piece, line by line, before overhead but for `cost`; money. */
export interface CostLines {
  readonly material: number;
  readonly bought: number;
  readonly machine: number;
  readonly labour: number;
  readonly tooling: number;
  readonly delivery: number;
  readonly cost: number;
  /** Time on the machine for a good piece, with its share of setting up, s. */
  readonly time: number;
  /** Lives of a set of tools that all pieces take; whole sets are paid. */
  readonly lives: number;
}

/** Rates of machines of one kind grow with this power of their size: the six-tenths rule. */
const SIZE_EXPONENT = 0.6;

/** Sets of tools for that many lives: a whole number, one at least. */
export const wholeSets = (lives: number): number => Math.max(1, Math.ceil(lives - 1e-9));

/**
 * Build-up of the cost of one good piece. Material is bought gross and what does not become part
 * of a good piece is sold as scrap; time and material of rejects are carried by the good ones;
 * tools are paid in whole sets over all pieces of the years.
 */
export function costLines(work: Work, run: Running): CostLines {
  const { gross = 0, bought = 0, cycle = 0, pieces = 1, size = 1, tool = 0, learned = 1 } = work;
  const net = work.net ?? gross;
  const good = 1 - run.rejects;
  const scrap = gross - net * good;
  const material = (gross * run.price - scrap * run.scrapPrice) / good;
  const time = cycle / pieces / (run.availability * good) + run.setUp / run.batch;
  const machine = run.machine * size ** SIZE_EXPONENT * time;
  const labour = run.labour * run.crew * time * learned;
  const made = run.volume * run.years;
  const lives = made / run.toolLife;
  const tooling = (tool * wholeSets(lives)) / made;
  const delivery = run.packaging + run.freight;
  const before = material + bought / good + machine + labour + tooling;
  const cost = run.overhead * (1 + run.profit) * before + delivery;
  return { material, bought: bought / good, machine, labour, tooling, delivery, cost, time, lives };
}
