/** A wait that can be ended from outside; ended before it began it does not last. */
export class Pause {
  #end: (() => void) | undefined;
  #ended = false;

  /** Ends by itself after so many seconds. */
  async of(seconds: number): Promise<void> {
    if (!this.#ended)
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, 1000 * seconds);
        this.#end = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    this.#ended = false;
    this.#end = undefined;
  }

  end(): void {
    this.#ended = this.#end === undefined;
    this.#end?.();
  }
}
