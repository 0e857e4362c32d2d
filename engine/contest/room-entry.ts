/** How students come into a room: under what names, and whether the teacher opens the door for each. */

/** A name of one's own, a name from the teacher's roster, or a friendly name that the room gives. */
export const NAME_WAYS = ['typed', 'roster', 'given'] as const
/** One of the three. */
export type NameWay = (typeof NAME_WAYS)[number]

/** What a teacher sets for the door of a room. */
export type RoomEntry = {
  readonly names: NameWay
  /** The roster that names are picked from; null unless `names` is `roster`. */
  readonly rosterId: string | null
  /** Whether the teacher lets each one in. Somebody who comes again from another device is always asked about. */
  readonly approve: boolean
}

/** A new room takes any kind name, at once. */
export const DEFAULT_ROOM_ENTRY: RoomEntry = { names: 'typed', rosterId: null, approve: false }
