/** Branded identifiers, so that a seat can never be passed where a round is meant. */

declare const brand: unique symbol
type Branded<T, Name extends string> = T & { readonly [brand]: Name }

export type TeacherId = Branded<string, 'TeacherId'>
export type RoomId = Branded<string, 'RoomId'>
export type RoundId = Branded<string, 'RoundId'>
export type SeatId = Branded<string, 'SeatId'>
/** Six letters that are read aloud in class; see room-code.ts. */
export type RoomCode = Branded<string, 'RoomCode'>
