/** Tasks that wait for a free thread: first come, first served, and not more of them than can be served in good time. */

/** One that waits. */
export type Waiting = {
  /** Its turn has come; settles when it is done. */
  readonly start: () => Promise<void>
  /** It will not be served. */
  readonly refuse: () => void
}

/** A line in front of several places. */
export class WaitingLine {
  readonly #nWaitingMax: number
  readonly #nAtOnce: number
  #waiting: Waiting[] = []
  #nUnderWay = 0
  #isOpen = false

  /** @param nAtOnce how many are served at a time */
  constructor(nAtOnce: number, nWaitingMax: number) {
    this.#nAtOnce = nAtOnce
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

  readonly #isDone = () => {
    this.#nUnderWay--
    this.#serve()
  }

  #serve(): void {
    while (this.#isOpen && this.#nUnderWay < this.#nAtOnce) {
      const next = this.#waiting.shift()
      if (next === undefined) return
      this.#nUnderWay++
      next.start().then(this.#isDone, this.#isDone)
    }
  }
}
