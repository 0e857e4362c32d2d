/**
 * Tasks that wait for a free thread: first come, first served, and not more of them than can be served in good time. Who has
 * only a short question goes before whoever has a long one, and long ones never take all the places: else a class that has
 * just begun would wait until the proofs of others are done.
 */

/** One that waits. */
export type Waiting = {
  /** Will it take its place for long? */
  readonly isLong: boolean
  /** Its turn has come; settles when it is done. */
  readonly start: () => Promise<void>
  /** It will not be served. */
  readonly refuse: () => void
}

/** A line in front of several places. */
export class WaitingLine {
  readonly #nWaitingMax: number
  readonly #nAtOnce: number
  readonly #nLongAtOnce: number
  #waiting: Waiting[] = []
  #nUnderWay = 0
  #nLongUnderWay = 0
  #isOpen = false

  /** @param nAtOnce how many are served at a time @param nLongAtOnce how many of them may be long ones */
  constructor(nAtOnce: number, nWaitingMax: number, nLongAtOnce = nAtOnce) {
    this.#nAtOnce = nAtOnce
    this.#nLongAtOnce = nLongAtOnce
    this.#nWaitingMax = nWaitingMax
  }

  /** @returns false when the line is full */
  join(one: Waiting): boolean {
    if (this.#waiting.length >= this.#nWaitingMax) return false
    this.#waiting.push(one)
    this.#serve()
    return true
  }

  /** @returns whether it was still waiting; if so, it is refused */
  leave(one: Waiting): boolean {
    const place = this.#waiting.indexOf(one)
    if (place === -1) return false
    this.#waiting.splice(place, 1)
    one.refuse()
    return true
  }

  /** From now on whoever waits is served. */
  open(): void {
    this.#isOpen = true
    this.#serve()
  }

  /** Refuses all that wait. */
  clear(): void {
    const all = this.#waiting
    this.#waiting = []
    for (const one of all) one.refuse()
  }

  #serve(): void {
    while (this.#isOpen && this.#nUnderWay < this.#nAtOnce) {
      const next = this.#takeNext()
      if (next === undefined) return
      const nLong = next.isLong ? 1 : 0
      const isDone = () => {
        this.#nUnderWay--
        this.#nLongUnderWay -= nLong
        this.#serve()
      }
      this.#nUnderWay++
      this.#nLongUnderWay += nLong
      next.start().then(isDone, isDone)
    }
  }

  #takeNext(): Waiting | undefined {
    const short = this.#waiting.findIndex(({ isLong }) => !isLong)
    const place = short === -1 && this.#nLongUnderWay < this.#nLongAtOnce ? 0 : short
    return place === -1 ? undefined : this.#waiting.splice(place, 1)[0]
  }
}
