/**
 * Those who play a round. A list, since with every turn a new one is made: copying the list of a class is copying one block
 * of memory, where a `Map` is filled anew entry by entry, and a class of 300 is searched through in a microsecond.
 */

import type { SeatId } from './ids.ts'
import type { Player, Round } from './round-state.ts'

/** @returns undefined for a student who has not turned yet */
export function playerOf({ players }: Pick<Round, 'players'>, seatId: SeatId): Player | undefined {
  return players.find((player) => player.seatId === seatId)
}

/** @returns the players with this one in the place of what was known of the same student, or as the last one */
export function withPlayer(players: readonly Player[], player: Player): readonly Player[] {
  const after = players.slice()
  const place = players.findIndex(({ seatId }) => seatId === player.seatId)
  after[place < 0 ? players.length : place] = player
  return after
}
