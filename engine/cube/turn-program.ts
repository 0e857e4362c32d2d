/**
 * A turn written out for pieces: which place each piece leaves, which it reaches, and how it is turned on the way.
 * Derived from the sticker permutations, so that a turn is defined in one place only.
 */

import { assert } from '../result.ts'
import { CENTRES_AT, EDGES_AT } from './cube-position.ts'
import { stickerPermutation } from './generators.ts'
import { ADD_NOTHING, cornerRow, edgeRow } from './piece-code.ts'
import { CENTRE_STICKERS, CORNER_PLACES, EDGE_PLACES, type PiecePlace } from './piece-places.ts'
import { ALL_TURNS, type Turn } from './turns.ts'

/** One piece's way: indexes 0..25 into a position, and the row of `CODE_AFTER_ADDING` that applies. */
type PieceStep = { readonly from: number; readonly to: number; readonly row: number }

/** Bytes of a quad: four sources, four targets, four rows. */
export const QUAD_BYTES = 12

/**
 * The programs of all turns one after another. Only changed places occur, always in groups of four which exchange
 * contents among themselves (a quad), so that four bytes can be read, turned and written without a scratch array.
 */
export const TURN_PROGRAMS: { readonly quads: Uint8Array; readonly startOfTurn: Uint16Array } = buildPrograms()

function buildPrograms() {
  const quads: number[] = []
  const startOfTurn = [0]
  for (const turn of ALL_TURNS) {
    const steps = inRings(stepsOf(turn))
    assert(steps.length % 4 === 0, 'a turn changes places in groups of four')
    for (let first = 0; first < steps.length; first += 4) {
      const quad = steps.slice(first, first + 4)
      quads.push(...quad.map(({ from }) => from), ...quad.map(({ to }) => to), ...quad.map(({ row }) => row))
    }
    startOfTurn.push(quads.length)
  }
  return { quads: Uint8Array.from(quads), startOfTurn: Uint16Array.from(startOfTurn) }
}

function stepsOf(turn: Turn): PieceStep[] {
  const targets = stickerPermutation(turn)
  return [
    ...pieceSteps(CORNER_PLACES, targets, cornerRow, 0),
    ...pieceSteps(EDGE_PLACES, targets, edgeRow, EDGES_AT),
    ...CENTRE_STICKERS.map((sticker, face) => ({
      from: CENTRES_AT + face,
      to: CENTRES_AT + CENTRE_STICKERS.indexOf(targets[sticker]),
      row: ADD_NOTHING,
    })),
  ].filter(({ from, to }) => from !== to)
}

/** The reference sticker of a place lands on some sticker of another place: which one says how the piece is turned. */
function pieceSteps(
  places: readonly PiecePlace[],
  targets: Uint8Array,
  rowOf: (steps: number) => number,
  firstIndex: number,
): PieceStep[] {
  return places.map(({ stickers }, from) => {
    const landing = targets[stickers[0]]
    const to = places.findIndex((place) => place.stickers.includes(landing))
    return { from: firstIndex + from, to: firstIndex + to, row: rowOf(places[to].stickers.indexOf(landing)) }
  })
}

/** Puts steps which hand pieces to each other side by side: rings of four, or pairs of two for a half turn. */
function inRings(steps: readonly PieceStep[]): PieceStep[] {
  const stepFrom = new Map(steps.map((step) => [step.from, step]))
  const ordered: PieceStep[] = []
  for (const first of steps) {
    let step = stepFrom.get(first.from)
    while (step !== undefined) {
      stepFrom.delete(step.from)
      ordered.push(step)
      step = stepFrom.get(step.to)
    }
  }
  return ordered
}
