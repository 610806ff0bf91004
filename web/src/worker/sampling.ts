import type { Progress, Sampled, SampleRun, WrittenInputs } from '../../../src/engine/index.ts';
import type { Id } from '../../../src/study/index.ts';

/** What an answer was asked with. */
export interface Asked {
  readonly question: string;
  readonly subject: Id | undefined;
  readonly over: WrittenInputs;
}

/** The worker looks after other calls at least so often, ms. */
const BREATH_MS = 30;

/**
 * The one Monte Carlo run of a worker. It gives way to other calls between its steps; a new run,
 * or a stop, ends the one before, of which nothing is left.
 */
export class Sampling {
  #run: SampleRun | undefined;

  /** What the run says; undefined when it was stopped. */
  async drive(run: SampleRun, told: (progress: Progress) => void): Promise<Sampled | undefined> {
    this.#run = run;
    let last = performance.now();
    for (let step = run.next(); ; step = run.next()) {
      if (step.done) {
        this.#run = undefined;
        return step.value;
      }
      if (performance.now() - last < BREATH_MS) continue;
      told(step.value);
      await breath();
      if (this.#run !== run) return undefined;
      last = performance.now();
    }
  }

  stop(): void {
    this.#run = undefined;
  }
}

/** Lets whatever has come in meanwhile go first. */
const breath = (): Promise<void> => new Promise((go) => setTimeout(go, 0));
