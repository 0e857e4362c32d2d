/** Everything that a teacher does in a room, as the screens of the desk need it; most of it is `deskActs` of live/. */

import type { RoundId, SeatId } from '../../engine/contest/ids.ts'
import type { Nudge } from '../../engine/contest/nudges.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { ShowingAt, Shown } from '../../engine/wire/shown.ts'
import type { ReviewView, TryLook } from '../../engine/wire/views.ts'
import type { OpenedTakeHome, TakeHomeWish } from '../live/open-take-home.ts'

export type RoomActs = {
  set(settings: RoundSettings): void
  lock(locked: boolean): void
  closeRoom(): void
  /** Opens another room, to take home, and goes there. */
  newTakeHome(wish: TakeHomeWish): Promise<OpenedTakeHome>
  setEntry(entry: RoomEntry): void
  answerKnock(knockId: string, letIn: boolean): void
  followPlan(plan: LessonPlan | null): void
  goToPart(at: number): void
  takeHome(rounds: readonly RoundSettings[], deadlineMs: number): void
  lookAtRound(roundId: RoundId): void
  /** Deals the next round for real cubes, without its signal. */
  deal(): void
  /** Gives the signal of a round that is dealt. */
  giveSignal(): void
  lookAt(seatId: SeatId): Promise<TryLook | null>
  nudge(to: 'all' | readonly SeatId[], nudge: Nudge): void
  show(shown: Shown | null, at?: ShowingAt): void
  showAt(at: ShowingAt): void
  review(roundId: RoundId): Promise<ReviewView | null>
  start(): void
  pause(): void
  resume(): void
  addTime(ms: number): void
  /** Shows par to the class before the end, or hides it again. */
  showPar(shown: boolean): void
  end(): void
  voidRound(): void
  removeSeat(id: SeatId): void
  renameSeat(id: SeatId, name: string): void
  pretendClass(seated: boolean): void
  leaveRoom(): void
  dismiss(): void
}
