/** Branded identifiers, so that a seat can never be passed where a round is meant. */

declare const brand: unique symbol
type Branded<T, Name extends string> = T & { readonly [brand]: Name }

/** Of a teacher, whose rooms no other teacher sees. */
export type TeacherId = Branded<string, 'TeacherId'>
/** Of a room; never shown, unlike its code. */
export type RoomId = Branded<string, 'RoomId'>
/** Of a round in any room. */
export type RoundId = Branded<string, 'RoundId'>
/** Of a student's seat in one room. It is no secret: the seat's token is. */
export type SeatId = Branded<string, 'SeatId'>
/** Six letters that are read aloud in class; see room-code.ts. */
export type RoomCode = Branded<string, 'RoomCode'>
