/** Everything that a teacher does in a room, as the screens of the desk need it. `deskActs` of live/ is one of these. */

import type { SeatId } from '../../engine/contest/ids.ts'
import type { RoundSettings } from '../../engine/contest/round-settings.ts'

export type RoomActs = {
  set(settings: RoundSettings): void
  lock(locked: boolean): void
  closeRoom(): void
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
  stopWatching(): void
  dismiss(): void
}
