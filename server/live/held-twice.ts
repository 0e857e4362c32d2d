/**
 * Something held twice: `applied` has every change that was accepted, `durable` only those on the disk. Whoever is shown
 * anything is shown `durable`, and whoever is told anything is told it when all that it rests on is durable: so neither a
 * crash nor a disk that refuses can undo what somebody has seen or heard. When a change is not stored, `applied` falls back.
 */

import { err, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Entry } from '../store/record.ts'
import type { StoreEntry } from './store-entry.ts'

export class HeldTwice<State> {
  readonly #store: StoreEntry
  #applied: State | null = null
  #durable: State | null = null
  /** Changes that are on their way to the disk; the newest settles last. */
  #nUnderWay = 0
  #newest: Promise<unknown> = Promise.resolve()
  /** Changes that were not stored, ever. */
  #nFailed = 0
  #isAstray = false

  constructor(store: StoreEntry) {
    this.#store = store
  }

  restore(state: State | null): void {
    this.#applied = state
    this.#durable = state
  }

  get applied(): State | null {
    return this.#applied
  }

  get durable(): State | null {
    return this.#durable
  }

  /** One was not stored, and others that were accepted behind it are still under way: nothing may be accepted until they are not. */
  get isAstray(): boolean {
    return this.#isAstray
  }

  /**
   * Accepts a change at once, and shows it when it is on the disk. Entries are stored in the order in which they come.
   *
   * @param applied what it is with the change
   * @param onDurable makes the same change to what is on the disk
   */
  change(
    applied: State,
    entry: Entry,
    onDurable: (durable: State | null) => State | null,
  ): Promise<Result<null, Refusal>> {
    this.#applied = applied
    this.#nUnderWay++
    const change = this.#carryOut(entry, onDurable)
    this.#newest = change.catch(() => undefined)
    return change
  }

  async #carryOut(entry: Entry, onDurable: (durable: State | null) => State | null): Promise<Result<null, Refusal>> {
    let isStored = false
    try {
      const stored = await this.#store(entry)
      isStored = stored.ok
      if (isStored) this.#durable = onDurable(this.#durable)
      return stored
    } finally {
      this.#nUnderWay--
      if (!isStored) {
        this.#nFailed++
        this.#isAstray = true
      }
      if (this.#isAstray && this.#nUnderWay === 0) {
        this.#applied = this.#durable
        this.#isAstray = false
      }
    }
  }

  /** What is told without a change of its own may rest on changes that are still under way: it waits for them. */
  async tell<T>(result: Result<T, Refusal>): Promise<Result<T, Refusal>> {
    if (this.#nUnderWay === 0) return result
    const nFailed = this.#nFailed
    await this.#newest
    return this.#nFailed === nFailed ? result : err({ code: 'store/saving-paused' })
  }
}
