/** Collects latencies and tells their percentiles. */
export class Latencies {
  readonly #all: number[] = []
  #isSorted = true

  add(ms: number): void {
    this.#all.push(ms)
    this.#isSorted = false
  }

  get n(): number {
    return this.#all.length
  }

  /** @param share 0 to 1; NaN when nothing was measured */
  percentile(share: number): number {
    if (!this.#isSorted) {
      this.#all.sort((a, b) => a - b)
      this.#isSorted = true
    }
    return this.#all[Math.min(this.#all.length - 1, Math.floor(share * this.#all.length))] ?? Number.NaN
  }
}
