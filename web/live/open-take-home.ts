/**
 * Opens a room for taking home beside whatever is going on: a room, its door, its plan, its rounds. Several messages, and
 * any of them can be refused; then the room is closed again, so that nothing half done is left behind.
 */

import type { RoomId } from '../../engine/contest/ids.ts'
import type { LessonPlan } from '../../engine/contest/plans/lesson-plan.ts'
import type { RoomEntry } from '../../engine/contest/room-entry.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { ask } from './socket.ts'

export type TakeHomeWish = {
  /** Null for a room without a plan. */
  readonly plan: LessonPlan | null
  readonly rounds: readonly RoundSettings[]
  readonly deadlineMs: number
  /** Null for a door as every new room has it. */
  readonly entry: RoomEntry | null
}

export type OpenedTakeHome =
  | { readonly roomId: RoomId }
  | {
      readonly refusal: Refusal
      /** A room without its rounds could not be closed again, and stands in the list. */
      readonly leavesARoom: boolean
    }

export async function openTakeHome({ plan, rounds, deadlineMs, entry }: TakeHomeWish): Promise<OpenedTakeHome> {
  const opened = await ask('room:open', {})
  if (!opened.ok) return { refusal: opened.error, leavesARoom: false }
  const roomId = opened.value.desk.room.id
  const steps = [
    () => (entry === null ? null : ask('room:entry', { roomId, entry })),
    () => (plan === null ? null : ask('room:use-plan', { roomId, plan })),
    () => ask('room:take-home', { roomId, rounds: [...rounds], deadlineMs }),
  ]
  for (const step of steps) {
    const answer = await step()
    if (answer === null || answer.ok) continue
    const closed = await ask('room:close', { roomId })
    return { refusal: answer.error, leavesARoom: !closed.ok }
  }
  return { roomId }
}
