/**
 * The round of a room, held twice. `applied` has everything that was accepted; `durable` only what is on the disk. Both are
 * made by the same pure functions from the same events, `durable` when the record says so. Whoever is shown anything is
 * shown `durable`, and whoever is told anything is told it when all that it rests on is durable: so neither a crash nor a
 * disk that refuses can undo what somebody has seen or heard. When a change is not stored, `applied` falls back.
 */

import { type ClockEvent, changeClock } from '../../engine/contest/change-clock.ts'
import type { RoomId, RoundId } from '../../engine/contest/ids.ts'
import { COUNTDOWN_MS, ROOM_ROUNDS_MAX } from '../../engine/contest/limits.ts'
import { isOpen, playedMs } from '../../engine/contest/round-clock.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import { aNewRound, type Round } from '../../engine/contest/round-state.ts'
import { playSteps, type TurnsAnswer, type TurnsSent, takeTurns } from '../../engine/contest/take-turns.ts'
import { formatStickers } from '../../engine/cube/stickers.ts'
import { drawStart } from '../../engine/method/draw-start.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { Entry } from '../store/record.ts'
import type { LiveParts } from './parts.ts'
import type { StoreEntry } from './store-entry.ts'

/** A round and the number of its clock events, which is the number of the next one. */
export type Standing = { readonly round: Round; readonly nClockEvents: number }

export type TurnsOfSeat = Pick<TurnsSent, 'seatId' | 'late' | 'tryNumber' | 'from' | 'steps'> & {
  readonly roundId: RoundId
}

export class RoomRound {
  readonly #parts: LiveParts
  readonly #roomId: RoomId
  readonly #store: StoreEntry
  #applied: Standing | null = null
  #durable: Standing | null = null
  /** Changes that are on their way to the disk; the newest settles last. */
  #nUnderWay = 0
  #newest: Promise<unknown> = Promise.resolve()
  /** Changes that were not stored, ever. */
  #nFailed = 0
  /** One was not stored, and others that were accepted behind it are still under way: nothing more is accepted until they are not. */
  #isAstray = false
  #starting: { readonly number: number; readonly done: Promise<Result<RoundId, Refusal>> } | null = null

  constructor(parts: LiveParts, roomId: RoomId, store: StoreEntry) {
    this.#parts = parts
    this.#roomId = roomId
    this.#store = store
  }

  restore(standing: Standing | null): void {
    this.#applied = standing
    this.#durable = standing
  }

  /** The round as it is on the disk: the only one that may be shown. */
  get shown(): Round | null {
    return this.#durable?.round ?? null
  }

  get nRounds(): number {
    return this.#durable?.round.number ?? 0
  }

  /** Whether a round is being dealt, or one is played that the teacher has to end before anything else. */
  get isUnderWay(): boolean {
    const phase = this.#applied?.round.clock.phase
    return this.#starting !== null || phase === 'running' || phase === 'paused'
  }

  /**
   * Deals a start and gives the signal in COUNTDOWN_MS.
   *
   * @param number the round that the desk means; pressing twice, or from two tabs, starts one round
   */
  start(number: number, settings: RoundSettings): Promise<Result<RoundId, Refusal>> {
    if (this.#starting?.number === number) return this.#starting.done
    const round = this.#applied?.round
    // The server was killed, or the disk refused, between the dealing and the signal: the desk counts that round already.
    const isWaiting = round?.clock.phase === 'ready' && number === round.number + 1
    if (round !== undefined && (number === round.number || isWaiting)) return this.#giveSignal(round)
    if (this.#starting !== null) return this.#tell(err({ code: 'room/round-open' }))
    const done = this.#start(number, settings).finally(() => {
      this.#starting = null
    })
    this.#starting = { number, done }
    return done
  }

  async #start(number: number, settings: RoundSettings): Promise<Result<RoundId, Refusal>> {
    if (number !== this.nRounds + 1) return this.#tell(err({ code: 'contest/wrong-phase', phase: 'other-round' }))
    if (number > ROOM_ROUNDS_MAX) return err({ code: 'room/too-many-rounds', max: ROOM_ROUNDS_MAX })
    if (this.#applied !== null && isOpen(this.#applied.round.clock)) return this.#tell(err({ code: 'room/round-open' }))
    const start = drawStart({
      span: { from: settings.from, to: settings.to },
      random: this.#parts.newRandom(),
      ...(settings.cases === null ? {} : { cases: settings.cases }),
    })
    const round = aNewRound({ id: this.#parts.newId() as RoundId, number, settings, start })
    const dealt: Standing = { round, nClockEvents: 0 }
    const entry = {
      kind: 'round-drawn',
      roundId: round.id,
      roomId: this.#roomId,
      number,
      settings,
      start: formatStickers(start),
      atMs: this.#parts.nowMs(),
    } as const
    const stored = await this.#change(dealt, entry, () => dealt)
    return stored.ok ? this.#giveSignal(round) : stored
  }

  async #giveSignal({ id }: Round): Promise<Result<RoundId, Refusal>> {
    if (this.#applied?.round.id !== id || this.#applied.round.clock.phase !== 'ready') return this.#tell(ok(id))
    const started = await this.change(id, { kind: 'started', startsAtMs: this.#parts.nowMs() + COUNTDOWN_MS })
    return started.ok ? ok(id) : started
  }

  /** Pause, resume, add time, end, void, outage. Asking again for what is so is no fault. */
  async change(roundId: RoundId, event: ClockEvent): Promise<Result<null, Refusal>> {
    const applied = this.#applied
    if (applied === null || applied.round.id !== roundId) return this.#tell(err({ code: 'contest/no-such-round' }))
    if (this.#isAstray) return err({ code: 'store/saving-paused' })
    if (isAlreadySo(applied.round, event)) return this.#tell(ok(null))
    const next = afterEvent(applied, event)
    if (!next.ok) return this.#tell(next)
    const { nClockEvents: order } = applied
    const entry = { kind: 'clock-event', roundId, order, event, atMs: this.#parts.nowMs() } as const
    return this.#change(next.value, entry, (durable) => {
      if (durable?.round.id !== roundId) return durable
      const after = afterEvent(durable, event)
      return after.ok ? after.value : this.#neverStored(durable, event.kind)
    })
  }

  /** Checks and stores the turns of a seat; resolves when they are on the disk. */
  async takeTurns({ roundId, ...sent }: TurnsOfSeat): Promise<Result<TurnsAnswer, Refusal>> {
    const applied = this.#applied
    if (applied === null || applied.round.id !== roundId) return this.#tell(err({ code: 'contest/no-such-round' }))
    if (this.#isAstray) return err({ code: 'store/saving-paused' })
    const event: TurnsSent = { ...sent, atMs: this.#parts.nowMs() }
    const taken = takeTurns(applied.round, event)
    if (!taken.ok) return this.#tell(taken)
    const { round, fresh, answer } = taken.value
    if (fresh === null) return this.#tell(ok(answer))
    const { tryNumber, from, steps } = fresh
    const { seatId, late, atMs } = event
    const momentMs = playedMs(applied.round.clock, atMs)
    const entry = { kind: 'steps', roundId, seatId, tryNumber, from, steps, late, momentMs, atMs } as const
    const stored = await this.#change({ ...applied, round }, entry, (durable) => {
      if (durable?.round.id !== roundId) return durable
      const after = playSteps(durable.round, { ...event, from, steps, momentMs })
      return after.ok ? { ...durable, round: after.value.round } : this.#neverStored(durable, 'steps')
    })
    return stored.ok ? ok(answer) : stored
  }

  /** Accepts a change at once, and shows it when it is on the disk. Entries are stored in the order in which they come. */
  #change(
    applied: Standing,
    entry: Entry,
    onDurable: (durable: Standing | null) => Standing | null,
  ): Promise<Result<null, Refusal>> {
    this.#applied = applied
    this.#nUnderWay++
    const change = this.#carryOut(entry, onDurable)
    this.#newest = change.catch(() => undefined)
    return change
  }

  async #carryOut(
    entry: Entry,
    onDurable: (durable: Standing | null) => Standing | null,
  ): Promise<Result<null, Refusal>> {
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
  async #tell<T>(result: Result<T, Refusal>): Promise<Result<T, Refusal>> {
    if (this.#nUnderWay === 0) return result
    const nFailed = this.#nFailed
    await this.#newest
    return this.#nFailed === nFailed ? result : err({ code: 'store/saving-paused' })
  }

  /** The record holds what the rules do not allow here. Shown stays what was; a restart will tell. */
  #neverStored(durable: Standing, what: string): Standing {
    this.#parts.log.error({ room: this.#roomId, round: durable.round.id, what }, 'stored, but against the rules')
    return durable
  }
}

function afterEvent(standing: Standing, event: ClockEvent): Result<Standing, Refusal> {
  const changed = changeClock(standing.round, event)
  return changed.ok ? ok({ round: changed.value, nClockEvents: standing.nClockEvents + 1 }) : changed
}

/** Two tabs of one desk, or a finger that presses twice: the second wish finds its work done. */
function isAlreadySo(round: Round, event: ClockEvent): boolean {
  const { phase } = round.clock
  if (event.kind === 'paused') return phase === 'paused'
  if (event.kind === 'resumed') return phase === 'running'
  if (event.kind === 'ended') return phase === 'ended'
  return event.kind === 'voided' && phase === 'void'
}
