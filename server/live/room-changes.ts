/** What has changed in a room since its screens were told last. The ticker reads it ten times a second and empties it. */

import type { SeatId } from '../../engine/contest/ids.ts'

export class RoomChanges {
  /** The views of desk and board. */
  views = false
  /** Those of all benches, */
  benches = false
  /** or only of these. */
  readonly seats = new Set<SeatId>()
  /** The lanes and cubes of these seats. */
  readonly lanes = new Set<SeatId>()
  /** How far the showing has gone. */
  showing = false

  /** Every screen of the room has something new to show. */
  tellEverybody(): void {
    this.views = true
    this.benches = true
  }
}
