/** Makes of a room one that is taken home: all its rounds open at once, for each to play alone, until a deadline. */

import type { RoomId } from '../../engine/contest/ids.ts'
import { TAKE_HOME_MS_MAX } from '../../engine/contest/limits.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { err, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { leavesAStart } from './deal-start.ts'
import type { LiveParts } from './parts.ts'
import type { RoomChanges } from './room-changes.ts'
import type { RoomRounds } from './room-rounds.ts'
import type { StoreEntry } from './store-entry.ts'

type TakeHomeParts = {
  readonly nowMs: LiveParts['nowMs']
  readonly roomId: RoomId
  readonly store: StoreEntry
  readonly rounds: RoomRounds
  readonly changes: RoomChanges
  /** Whether the room is closed, or about to be. */
  readonly isClosing: () => boolean
}

export class RoomTakeHome {
  readonly #parts: TakeHomeParts
  #deadlineMs: number | null
  /** Wishes, carried out one after the other. */
  #opening: Promise<unknown> = Promise.resolve()
  #nOpenings = 0

  constructor(parts: TakeHomeParts, deadlineMs: number | null) {
    this.#parts = parts
    this.#deadlineMs = deadlineMs
  }

  /** Until when the room is open; null in a room where all play at once. */
  get deadlineMs(): number | null {
    return this.#deadlineMs
  }

  /** Is it a take-home room, or about to become one? Then no round for all at once begins there. */
  get isWanted(): boolean {
    return this.#deadlineMs !== null || this.#nOpenings > 0
  }

  /**
   * Opens all rounds at once. Where this stopped half way it goes on when the same is asked again; anything else is refused
   * once it has begun.
   */
  open(rounds: readonly RoundSettings[], deadlineMs: number): Promise<Result<null, Refusal>> {
    this.#nOpenings++
    const opened = this.#opening
      .then(() => this.#open(rounds, deadlineMs))
      .finally(() => {
        this.#nOpenings--
      })
    this.#opening = opened.catch(() => undefined)
    return opened
  }

  async #open(wanted: readonly RoundSettings[], deadlineMs: number): Promise<Result<null, Refusal>> {
    const { nowMs, roomId, store, rounds, changes, isClosing } = this.#parts
    const now = nowMs()
    if (isClosing()) return err({ code: 'room/closed' })
    if (deadlineMs <= now || now + TAKE_HOME_MS_MAX < deadlineMs) return err({ code: 'room/bad-deadline' })
    const isUsed =
      this.#deadlineMs === null
        ? rounds.nRounds > 0 || rounds.isUnderWay
        : this.#deadlineMs !== deadlineMs || !rounds.areFirstOf(wanted)
    if (isUsed) return err({ code: 'room/already-used' })
    for (const each of wanted) if (!(await leavesAStart(each))) return err({ code: 'room/no-such-start' })
    const stored = await store({ kind: 'room-deadline', roomId, deadlineMs })
    if (!stored.ok) return stored
    this.#deadlineMs = deadlineMs
    const opened = await rounds.openAll(wanted, deadlineMs)
    changes.tellEverybody()
    return opened
  }
}
