/**
 * The cube as it is seen: 54 stickers, each named by the home face whose colour it has.
 *
 * Order: faces U R F D L B, each read row by row as seen by someone who looks straight at it; U is seen with B at its
 * top edge, R F L B with U at the top, D with F at its top edge. `parseStickers` is the one door from text to a legal
 * position.
 */

import { err, ok, type Result } from '../result.ts'
import { CENTRES_AT, type CubePosition, EDGES_AT, POSITION_BYTES } from './cube-position.ts'
import { FACES, type Face } from './faces.ts'
import { areCentresOfAHold } from './hold.ts'
import { findLegalityFault, type LegalityFault } from './legality.ts'
import { cornerCode, cornerPiece, cornerTwist, edgeCode, edgeFlip, edgePiece } from './piece-code.ts'
import { CENTRE_STICKERS, CORNER_PLACES, EDGE_PLACES, type PiecePlace } from './piece-places.ts'
import { N_STICKERS } from './sticker-places.ts'

/** Of the face letters, as character codes. */
const LETTER_CODES = FACES.map((face) => face.charCodeAt(0))

/** Why a written picture is not a position: the first fault in this order. Places are named by the faces they touch. */
export type PositionFault =
  /** A character is no face letter. Data: the character and its 0-based place in the text. Do: correct it. */
  | { readonly code: 'cube/unknown-sticker'; readonly token: string; readonly at: number }
  /** Not 54 letters. Data: how many there are. Do: complete the picture. */
  | { readonly code: 'cube/sticker-count'; readonly nStickers: number }
  /** The six centres do not lie to each other as on a solved cube. Do: look at the middle of each face again. */
  | { readonly code: 'cube/centres' }
  /** No piece has these colours in this order. Data: the place. Do: look at that place again. */
  | { readonly code: 'cube/unknown-piece'; readonly place: string }
  /** The piece was seen before. Data: the second place, and the piece by its home. Do: look at both again. */
  | { readonly code: 'cube/doubled-piece'; readonly place: string; readonly piece: string }
  | LegalityFault

/** @returns 54 home face indexes 0..5, in reading order */
export function stickersOf(position: CubePosition): Uint8Array {
  const stickers = new Uint8Array(N_STICKERS)
  for (let index = 0; index < EDGES_AT; index++) {
    const code = position[index]
    showPiece(stickers, CORNER_PLACES[index], CORNER_PLACES[cornerPiece(code)], cornerTwist(code))
  }
  for (let index = EDGES_AT; index < CENTRES_AT; index++) {
    const code = position[index]
    showPiece(stickers, EDGE_PLACES[index - EDGES_AT], EDGE_PLACES[edgePiece(code)], edgeFlip(code))
  }
  for (let index = CENTRES_AT; index < POSITION_BYTES; index++) {
    stickers[CENTRE_STICKERS[index - CENTRES_AT]] = position[index]
  }
  return stickers
}

/** @returns 54 face letters in reading order; inverse: `parseStickers` */
export function formatStickers(position: CubePosition): string {
  const letters = stickersOf(position)
  for (let sticker = 0; sticker < N_STICKERS; sticker++) letters[sticker] = LETTER_CODES[letters[sticker]]
  // Spreading them would make an object for each letter, and every cube of a wall is written ten times a second.
  const text: string = Reflect.apply(String.fromCharCode, null, letters)
  return text
}

/**
 * Reads a picture of the cube, in any hold. White space between the letters is ignored.
 *
 * @param text 54 letters of `FACES`, in reading order
 * @returns the position, which turns can solve, or the first fault
 */
export function parseStickers(text: string): Result<CubePosition, PositionFault> {
  const stickers: number[] = []
  for (const { 0: token, index: at } of text.matchAll(/\S/gu)) {
    const face = FACES.indexOf(token as Face)
    if (face < 0) return err({ code: 'cube/unknown-sticker', token, at })
    stickers.push(face)
  }
  if (stickers.length !== N_STICKERS) return err({ code: 'cube/sticker-count', nStickers: stickers.length })
  return readPieces(stickers)
}

function readPieces(stickers: readonly number[]): Result<CubePosition, PositionFault> {
  const centres = CENTRE_STICKERS.map((sticker) => stickers[sticker])
  if (!areCentresOfAHold(centres)) return err({ code: 'cube/centres' })
  const corners = readKind(stickers, CORNER_PLACES, cornerCode)
  if (!corners.ok) return corners
  const edges = readKind(stickers, EDGE_PLACES, edgeCode)
  if (!edges.ok) return edges
  const pieces = Uint8Array.from([...corners.value, ...edges.value, ...centres])
  const fault = findLegalityFault(pieces)
  return fault === undefined ? ok(pieces as CubePosition) : err(fault)
}

/** Finds out which piece stands at each place of a kind, and how it is turned. */
function readKind(
  stickers: readonly number[],
  places: readonly PiecePlace[],
  codeOf: (piece: number, turned: number) => number,
): Result<number[], PositionFault> {
  const codes: number[] = []
  const isSeen = new Set<number>()
  for (const place of places) {
    const seen = place.stickers.map((sticker) => stickers[sticker])
    const turned = seen.findIndex((_, by) => places.some((piece) => isSeenTurned(piece, seen, by)))
    if (turned < 0) return err({ code: 'cube/unknown-piece', place: place.name })
    const piece = places.findIndex((candidate) => isSeenTurned(candidate, seen, turned))
    if (isSeen.has(piece)) return err({ code: 'cube/doubled-piece', place: place.name, piece: places[piece].name })
    isSeen.add(piece)
    codes.push(codeOf(piece, turned))
  }
  return ok(codes)
}

function isSeenTurned(piece: PiecePlace, seen: readonly number[], turned: number): boolean {
  return piece.faces.every((face, index) => face === seen[(index + turned) % seen.length])
}

function showPiece(stickers: Uint8Array, place: PiecePlace, piece: PiecePlace, turned: number): void {
  const nSides = place.stickers.length
  for (let side = 0; side < nSides; side++) stickers[place.stickers[(side + turned) % nSides]] = piece.faces[side]
}
