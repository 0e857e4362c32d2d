/**
 * The rounds of a room. A class plays one at a time and holds only the last; a take-home room holds all of its rounds, each
 * open until the deadline. Those before them are with EarlierRounds.
 */

import type { ClockEvent } from '../../engine/contest/change-clock.ts'
import type { TryHandedIn } from '../../engine/contest/hand-in.ts'
import type { RoomId, RoundId, SeatId } from '../../engine/contest/ids.ts'
import type { Nudge } from '../../engine/contest/nudges.ts'
import { playerOf } from '../../engine/contest/players.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Reached, Round } from '../../engine/contest/round-state.ts'
import type { TurnsAnswer } from '../../engine/contest/take-turns.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { RoundOnRecord } from '../store/record.ts'
import { EarlierRounds } from './earlier-rounds.ts'
import { type ListedRound, listed, listedFromRecord } from './listed-round.ts'
import type { LiveParts } from './parts.ts'
import { RoomRound, type Standing, type TurnsOfSeat } from './room-round.ts'
import type { Seat } from './room-seats.ts'
import { type Guide, RoundGuide, type RoundSetup } from './round-guide.ts'
import type { StoreEntry } from './store-entry.ts'
import { tookPart } from './took-part.ts'

/** A round that is in memory, with its par and ways. */
type HeldRound = { readonly held: RoomRound; readonly guide: RoundGuide }

export class RoomRounds {
  readonly #parts: LiveParts
  readonly #roomId: RoomId
  readonly #store: StoreEntry
  readonly #tell: () => void
  #held: HeldRound[] = []
  /** Which of the held rounds desk and board look at. */
  #lookedAt = 0
  readonly #earlier: EarlierRounds
  /** Rounds whose par the teacher shows ahead of their end. */
  readonly #parShown = new Set<RoundId>()

  /** @param tell called whenever there is something new of par or ways */
  constructor(parts: LiveParts, roomId: RoomId, store: StoreEntry, tell: () => void) {
    this.#parts = parts
    this.#roomId = roomId
    this.#store = store
    this.#tell = tell
    this.#earlier = new EarlierRounds(parts, store)
    this.#held = [this.#emptyHeld(0)]
  }

  restore(rounds: readonly RoundOnRecord[], held: readonly { standing: Standing; parShown: boolean }[]): void {
    const heldIds = new Set(held.map(({ standing }) => standing.round.id))
    this.#earlier.restore(rounds.filter(({ roundId }) => !heldIds.has(roundId)).map(listedFromRecord))
    if (held.length === 0) return
    this.#held = held.map(({ standing }) => this.#emptyHeld(standing.round.number - 1))
    for (const [index, { standing, parShown }] of held.entries()) {
      this.#held[index].held.restore(standing)
      if (parShown) this.#parShown.add(standing.round.id)
      this.#follow(this.#held[index])
    }
  }

  /** The round that desk and board look at, as it is on the disk. */
  get shown(): Round | null {
    return this.#held[this.#lookedAt].held.shown
  }

  /** Every round that is in memory, the first one first. */
  get all(): readonly Round[] {
    return this.#held.flatMap(({ held }) => held.shown ?? [])
  }

  get nRounds(): number {
    return this.#last.nRounds
  }

  get isUnderWay(): boolean {
    return this.#held.some(({ held }) => held.isUnderWay)
  }

  get list(): readonly ListedRound[] {
    return [...this.#earlier.list, ...this.all.map(listed)]
  }

  of(roundId: RoundId): Round | null {
    return this.all.find(({ id }) => id === roundId) ?? null
  }

  /** @returns the round in which this seat has made its last step; null before the first */
  playedLastBy(seatId: SeatId): Round | null {
    const atMs = (round: Round) => playerOf(round, seatId)?.lastStepAtMs ?? 0
    const last = [...this.all].sort((a, b) => atMs(b) - atMs(a))[0]
    return last !== undefined && playerOf(last, seatId) !== undefined ? last : null
  }

  /** Are the rounds that are held the first of these? Their pace and their clock aside, which a take-home room sets. */
  areFirstOf(wanted: readonly RoundSettings[]): boolean {
    const held = this.all
    return held.length <= wanted.length && held.every(({ settings }, index) => isSameGame(settings, wanted[index]))
  }

  guideOf(roundId: RoundId): Guide | null {
    return this.#find(roundId)?.guide.of(roundId) ?? null
  }

  setupOf(roundId: RoundId): RoundSetup | null {
    return this.#find(roundId)?.guide.setupOf(roundId) ?? null
  }

  isParShown(roundId: RoundId): boolean {
    return this.#parShown.has(roundId)
  }

  lookAt(roundId: RoundId): Result<null, Refusal> {
    const index = this.#held.findIndex(({ held }) => held.shown?.id === roundId)
    if (index < 0) return err({ code: 'contest/no-such-round' })
    this.#lookedAt = index
    return ok(null)
  }

  async start(number: number, settings: RoundSettings): Promise<Result<RoundId, Refusal>> {
    return this.#next((last) => last.start(number, settings))
  }

  /** Deals the next round without its signal. */
  async deal(number: number, settings: RoundSettings): Promise<Result<RoundId, Refusal>> {
    return this.#next((last) => last.deal(number, settings))
  }

  async #next(act: (last: RoomRound) => Promise<Result<RoundId, Refusal>>): Promise<Result<RoundId, Refusal>> {
    const last = this.#held[this.#held.length - 1]
    const done = await act(last.held)
    this.#follow(last)
    return done
  }

  /**
   * Deals all rounds at once, each open until the deadline. A room in which this stopped half way, because the disk refused,
   * goes on where it stopped when it is asked again.
   */
  async openAll(wanted: readonly RoundSettings[], deadlineMs: number): Promise<Result<null, Refusal>> {
    for (const [index, settings] of wanted.entries()) {
      this.#held[index] ??= this.#emptyHeld(index)
      const one = this.#held[index]
      const timeLimitMs = Math.max(1, deadlineMs - this.#parts.nowMs())
      const dealt = await one.held.deal(index + 1, { ...settings, pace: 'alone', timeLimitMs })
      if (!dealt.ok) return dealt
      this.#follow(one)
      // It may have been dealt a while ago: it ends at the deadline all the same.
      const startsAtMs = deadlineMs - (one.held.shown?.settings.timeLimitMs ?? timeLimitMs)
      const opened = await one.held.change(dealt.value, { kind: 'started', startsAtMs })
      const isOpenAlready = !opened.ok && opened.error.code === 'contest/wrong-phase'
      if (!opened.ok && !isOpenAlready) return opened
    }
    return ok(null)
  }

  async change(roundId: RoundId, event: ClockEvent): Promise<Result<null, Refusal>> {
    const one = this.#find(roundId)
    if (one === null) return this.#noSuchRound()
    const changed = await one.held.change(roundId, event)
    if (changed.ok && event.kind === 'voided') one.guide.stop()
    return changed
  }

  async showPar(roundId: RoundId, shown: boolean): Promise<Result<null, Refusal>> {
    if (this.of(roundId) === null) return this.#noSuchRound()
    const stored = await this.#store({ kind: 'par-shown', roundId, shown })
    if (!stored.ok) return stored
    if (shown) this.#parShown.add(roundId)
    else this.#parShown.delete(roundId)
    return stored
  }

  takeTurns(sent: TurnsOfSeat): Promise<Result<TurnsAnswer, Refusal>> {
    return this.#find(sent.roundId)?.held.takeTurns(sent) ?? this.#noSuchRound()
  }

  nudge(roundId: RoundId, seatIds: readonly SeatId[], nudge: Nudge): Promise<Result<null, Refusal>> {
    return this.#find(roundId)?.held.nudge(roundId, seatIds, nudge) ?? this.#noSuchRound()
  }

  /** Judges a try that comes in after the end of its round, also when another one has begun since, and keeps it. */
  async handIn(
    seat: Seat,
    roundId: RoundId,
    sent: Omit<TryHandedIn, 'seatId'>,
  ): Promise<Result<Reached | null, Refusal>> {
    const round = this.of(roundId)
    // Who came after the end had no part in it.
    if (round !== null && !tookPart(round, seat)) return err({ code: 'contest/round-over' })
    const one = this.#find(roundId)
    if (one !== null) return one.held.handIn(roundId, { ...sent, seatId: seat.id })
    // The next one may be on its way to the disk: until it is there, its round is not an earlier one.
    const settled = await this.#last.settled(ok(null))
    return settled.ok ? this.#earlier.handIn(seat, roundId, sent) : settled
  }

  /** Gives up what is still searched. */
  stop(): void {
    for (const { guide } of this.#held) guide.stop()
  }

  /** An answer may rest on changes under way: whoever holds no such round asks the last one, which waits for them. */
  #noSuchRound(): Promise<Result<never, Refusal>> {
    return this.#last.settled(err({ code: 'contest/no-such-round' }))
  }

  get #last(): RoomRound {
    return this.#held[this.#held.length - 1].held
  }

  #find(roundId: RoundId): HeldRound | null {
    return this.#held.find(({ held }) => held.holds(roundId)) ?? null
  }

  #emptyHeld(nRoundsBefore: number): HeldRound {
    return {
      held: new RoomRound(this.#parts, this.#roomId, this.#store, nRoundsBefore, (round) =>
        this.#earlier.add(listed(round)),
      ),
      guide: new RoundGuide(this.#parts, this.#tell),
    }
  }

  #follow({ held, guide }: HeldRound): void {
    const round = held.shown
    if (round !== null) guide.follow(round)
  }
}

function isSameGame(a: RoundSettings, b: RoundSettings): boolean {
  const game = (settings: RoundSettings) =>
    JSON.stringify(Object.entries({ ...settings, pace: null, timeLimitMs: null }).sort())
  return game(a) === game(b)
}
