/**
 * A disk for a test: commits can be held back, and can fail. It keeps the record's contract: entries are committed in order,
 * many at a time, and when a commit fails everything that waits fails with it.
 */

import { type DurableRecord, type Entry, type Outcome, SavingPaused } from '../../../server/store/record.ts'

type Waiting = { entry: Entry; resolve: (outcome: Outcome) => void; reject: (fault: Error) => void }

export class TestDisk {
  /** Every entry that was asked to be stored, in order. */
  readonly asked: Entry[] = []
  #record: DurableRecord | null = null
  #waiting: Waiting[] = []
  #isCommitting = false
  #isHeld = false
  #isRefusing = false
  #holdFrom: Entry['kind'] | null = null
  #dropped: Entry['kind'] | null = null
  #failsAt: number | null = null
  #nAsked = 0
  #saving = true
  readonly #listeners = new Set<(saving: boolean) => void>()

  /** To be given to `aServer`. */
  readonly wrap = (record: DurableRecord): DurableRecord => {
    this.#record = record
    const isSaving = () => this.#saving
    return {
      write: (entry) => this.#write(entry),
      loadOpenRooms: () => record.loadOpenRooms(),
      teacherOfSession: (...asked) => record.teacherOfSession(...asked),
      loadRound: (roundId) => record.loadRound(roundId),
      loadShelf: () => record.loadShelf(),
      lastAliveMs: () => record.lastAliveMs(),
      get saving() {
        return isSaving()
      },
      onSavingChanged: (listener) => {
        this.#listeners.add(listener)
        return () => this.#listeners.delete(listener)
      },
      close: async () => {
        this.release()
        while (this.#waiting.length > 0 || this.#isCommitting) await new Promise((resolve) => setTimeout(resolve, 5))
        await record.close()
      },
    }
  }

  /** Nothing is committed until it is released: from now on, or from the next entry of a kind on. */
  hold(from?: Entry['kind']): void {
    if (from === undefined) this.#isHeld = true
    this.#holdFrom = from ?? null
  }

  release(): void {
    this.#isHeld = false
    void this.#commit()
  }

  /** What waits now fails, as a whole; what comes afterwards is stored. */
  failWhatWaits(): void {
    this.#isHeld = false
    this.#fail()
    this.#setSaving(true)
  }

  refuse(isRefusing: boolean): void {
    this.#isRefusing = isRefusing
    if (isRefusing) this.#fail()
    this.#setSaving(!isRefusing)
  }

  /** The commit that holds the `nth` entry from now on fails, once. Signs of life do not count. */
  refuseAt(nth: number): void {
    this.#failsAt = this.#nAsked + nth
  }

  /** Whether the commit of `refuseAt` was reached. */
  get hasFailed(): boolean {
    return this.#failsAt === null
  }

  /** Entries of this kind are taken and lost, as when the server dies before it comes to them. */
  drop(kind: Entry['kind']): void {
    this.#dropped = kind
  }

  failNoMore(): void {
    this.#failsAt = null
  }

  #write(entry: Entry): Promise<Outcome> {
    if (this.#isRefusing) {
      this.#setSaving(false)
      return Promise.reject(new SavingPaused('SQLITE_FULL'))
    }
    if (entry.kind === this.#dropped) return Promise.resolve('stored')
    this.asked.push(entry)
    if (entry.kind === this.#holdFrom) this.hold()
    if (entry.kind !== 'alive') this.#nAsked++
    const isFailing = this.#failsAt !== null && entry.kind !== 'alive' && this.#nAsked >= this.#failsAt
    return new Promise((resolve, reject) => {
      this.#waiting.push({ entry, resolve, reject })
      if (isFailing) {
        this.#failsAt = null
        this.#isHeld = true
        setImmediate(() => this.failWhatWaits())
      } else void this.#commit()
    })
  }

  async #commit(): Promise<void> {
    if (this.#isCommitting) return
    this.#isCommitting = true
    // As long as a commit takes, others gather behind it.
    await new Promise((resolve) => setImmediate(resolve))
    while (this.#waiting.length > 0 && !this.#isHeld) {
      const batch = this.#waiting
      this.#waiting = []
      const outcomes = await Promise.all(batch.map(({ entry }) => this.#record!.write(entry)))
      for (const [index, { resolve }] of batch.entries()) resolve(outcomes[index])
    }
    this.#isCommitting = false
  }

  #fail(): void {
    const lost = this.#waiting
    this.#waiting = []
    for (const { reject } of lost) reject(new SavingPaused('SQLITE_FULL'))
    if (lost.length > 0) this.#setSaving(false)
  }

  #setSaving(saving: boolean): void {
    if (this.#saving === saving) return
    this.#saving = saving
    for (const listener of this.#listeners) listener(saving)
  }
}
