/**
 * Places of some variables in the order in which they are first met, so that sums over them run
 * in an order that the study gives and not the history of its edits. Kept and used again: a
 * place counts only where its stamp is that of the round.
 */
export class Numbering {
  #round = 0;
  #stamps = new Int32Array(64);
  #places = new Int32Array(64);
  #vars = new Int32Array(64);
  count = 0;

  /** Starts a round over variables numbered below `size`. */
  begin(size: number): void {
    this.#round++;
    this.count = 0;
    if (this.#stamps.length >= size) return;
    this.#stamps = new Int32Array(2 * size);
    this.#places = new Int32Array(2 * size);
    this.#vars = new Int32Array(2 * size);
  }

  /** Place of a variable, the next one when it is new. */
  placeOf(variable: number): number {
    if (this.#stamps[variable] === this.#round) return this.#places[variable] ?? 0;
    this.#stamps[variable] = this.#round;
    this.#places[variable] = this.count;
    this.#vars[this.count] = variable;
    return this.count++;
  }

  placesOf(variables: ArrayLike<number>): Int32Array {
    const places = new Int32Array(variables.length);
    for (let i = 0; i < places.length; i++) places[i] = this.placeOf(variables[i] ?? 0);
    return places;
  }

  /** The variables met in this round, by place. */
  met(): Int32Array {
    return this.#vars.slice(0, this.count);
  }
}
